from load.files import file_with

from seqplan.load.document import load_text
from seqplan.model.garment import Garment
from seqplan.model.station import DEFAULT_STATIONS


def _garment(**lines: str) -> Garment:
    loaded = load_text(file_with(**lines))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    return loaded.garment


def test_plain_text_is_the_kind_of_a_fabric_or_notion() -> None:
    garment = _garment(fabric="net: knit", notion="hook: hook and eye")
    assert garment.fabrics[-1].kind == "knit"
    assert (garment.notions[-1].kind, garment.notions[-1].count) == ("hook and eye", 1)


def test_a_fabric_is_woven_unless_it_says_otherwise() -> None:
    assert _garment(fabric="net: {weight: light}").fabrics[-1].kind == "woven"


def test_a_station_is_changed_in_its_place() -> None:
    garment = _garment(station="lockstitch: {foot minutes: 3}")
    first = garment.stations[0]
    assert (first.id, first.minutes, first.foot_minutes) == ("lockstitch", 2, 3)
    assert first.path == ("stations", "lockstitch")
    assert [station.id for station in garment.stations] == [s.id for s in DEFAULT_STATIONS]


def test_a_new_station_comes_last_and_is_marked_by_its_title() -> None:
    station = _garment(station="eyelets: {title: eyelet press, minutes: 2}").stations[-1]
    assert (station.id, station.mark, station.minutes, station.foot_minutes) == (
        "eyelets",
        "E",
        2,
        0,
    )


def test_without_a_section_the_usual_stations_are_there() -> None:
    loaded = load_text("garment: Pier apron\noperations: {a: {do: x, station: iron}}\n")
    assert loaded.garment is not None
    assert loaded.garment.stations == DEFAULT_STATIONS
