import pytest
from rules.reasoning import construction, garment, problems

from seqplan.recipes.expand import construct

TWO = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: fold, edges: [waist, side, hem]}
  facing: {cut: fold, layer: facing, edges: [waist, end, lower]}
notions:
  elastic: {kind: wide elastic}
  cord: {kind: cord}
  hook: {kind: hook}
fabrics: {fusible: {kind: interfacing}}
operations:
"""
OPENING = """
pieces:
  back: {cut: pair, edges: [waist, side, hem, centre | opening]}
notions:
  zip: {kind: zip}
  hidden: {kind: invisible zip}
operations:
"""


def written(built, entry):
    """The operations of an entry, as ``part action station foot``."""
    return [
        " ".join(filter(None, [op.part, f"[{op.action.value}]", op.setup.station, op.setup.foot]))
        for op in built.of_entry[entry]
    ]


def expanded(text, entry="it"):
    return written(construction(text), entry)


@pytest.mark.parametrize(
    ("entry", "recipe"),
    [
        ("{sew: front.side, to: back.side}", "[sew] lockstitch standard"),
        (
            "{sew: front.side, to: back.side, as: pressed open}",
            """finish [finish] overlocker
               [sew] lockstitch standard
               press [press] iron""",
        ),
        (
            "{sew: front.side, to: back.side, as: finished together}",
            """[sew] lockstitch standard
               finish [finish] overlocker
               press [press] iron""",
        ),
        (
            "{sew: front.side, to: back.side, as: French}",
            """[sew] lockstitch standard
               trim [trim] table
               press-over [press over] iron
               enclose [enclose] lockstitch standard
               press [press] iron""",
        ),
        (
            "{sew: front.waist, to: facing.waist, as: faced}",
            """[sew] lockstitch standard
               trim [trim] table
               clip [clip] table
               press [press] iron
               understitch [understitch] lockstitch standard
               turn [turn] iron""",
        ),
        (
            "{hem: front.hem}",
            """turn-up [turn up] iron
               [hem] lockstitch standard
               press [press] iron""",
        ),
        (
            "{hem: front.hem, turned: once, by: hand}",
            """finish [finish] overlocker
               turn-up [turn up] iron
               [hem] hand
               press [press] iron""",
        ),
        (
            "{casing: front.waist}",
            """turn-up [turn up] iron
               [case] lockstitch standard""",
        ),
        (
            "{dart: front.waist}",
            """[dart] lockstitch standard
               press [press] iron""",
        ),
        (
            "{pleat: front.waist}",
            """[pleat] lockstitch standard
               press [press] iron""",
        ),
        ("{gather: front.waist}", "[gather] lockstitch standard"),
        ("{fuse: facing, with: fusible}", "[fuse] iron"),
        ("{staystitch: front.waist}", "[staystitch] lockstitch standard"),
        ("{baste: front.side, to: back.side}", "[baste] lockstitch standard"),
        ("{finish: front.side}", "[finish] overlocker"),
        ("{trim: front.side}", "[trim] table"),
        ("{clip: front.side}", "[clip] table"),
        ("{press: front.side}", "[press] iron"),
        ("{understitch: facing.waist}", "[understitch] lockstitch standard"),
        ("{topstitch: front.side}", "[topstitch] lockstitch standard"),
        ("{tack: facing.end, to: hook}", "[tack] hand"),
        ("{attach: hook, at: front.waist}", "[attach] hand"),
        ("{remove basting: front.side}", "[remove basting] table"),
        ("{turn: front}", "[turn] table"),
        ("{fit: all}", "[fit] table"),
        ("{inspect: all}", "[inspect] table"),
        ("{do: have tea}", "[do] table"),
    ],
)
def test_a_verb_or_a_kind_of_seam_expands_into_its_operations(entry, recipe):
    assert expanded(f"{TWO}  it: {entry}\n") == [line.strip() for line in recipe.splitlines()]


@pytest.mark.parametrize(
    ("entry", "recipe"),
    [
        (
            "{insert: zip, in: back.opening}",
            """baste [baste] lockstitch standard
               press [press] iron
               [set zip] lockstitch zip
               unbaste [remove basting] table""",
        ),
        (
            "{insert: hidden, in: back.opening}",
            """coils [press coils] iron
               [set zip] lockstitch invisible zip""",
        ),
    ],
)
def test_a_zip_is_set_in_the_way_of_its_kind(entry, recipe):
    assert expanded(f"{OPENING}  it: {entry}\n") == [line.strip() for line in recipe.splitlines()]


@pytest.mark.parametrize(
    ("casing", "insert", "recipe"),
    [
        ("", "elastic", ["[thread] hand", "join [join ends] lockstitch standard"]),
        (
            ", gap: 5",
            "elastic",
            [
                "[thread] hand",
                "join [join ends] lockstitch standard",
                "close [close gap] lockstitch standard",
            ],
        ),
        (", gap: 5", "cord", ["[thread] hand"]),
    ],
)
def test_elastic_is_joined_and_its_gap_closed_and_a_cord_stays_open(casing, insert, recipe):
    text = f"{TWO}  top: {{casing: front.waist{casing}}}\n  it: {{insert: {insert}, in: top}}\n"
    assert expanded(text) == recipe
    threading = construction(text).main("it")
    assert threading.pieces == {"front"}
    assert threading.notions == (insert,)


def test_operations_keep_the_written_order_of_the_entries():
    text = f"{TWO}  hem: {{hem: front.hem}}\n  tea: {{do: have tea}}\n"
    assert construction(text).ids == ("hem/turn-up", "hem", "hem/press", "tea")


def test_parts_that_the_author_leaves_out_are_left_out():
    text = f"{TWO}  it: {{hem: front.hem, without: [turn-up, press]}}\n"
    assert expanded(text) == ["[hem] lockstitch standard"]


def test_station_foot_and_minutes_are_those_of_the_main_operation():
    text = f"{TWO}  it: {{hem: front.hem, station: coverstitch, foot: wide, minutes: 9}}\n"
    turn_up, main, press = construction(text).of_entry["it"]
    assert (main.setup.station, main.setup.foot, main.minutes) == ("coverstitch", "wide", 9)
    assert (turn_up.setup.station, turn_up.setup.foot, turn_up.minutes) == ("iron", "", None)
    assert press.setup.station == "iron"


def test_a_standard_foot_is_named_only_where_feet_are_changed():
    text = f"{TWO}  it: {{do: a thing, station: lockstitch}}\n  that: {{do: more, station: hand}}\n"
    assert expanded(text) == ["[do] lockstitch standard"]
    assert expanded(text, "that") == ["[do] hand"]


def test_an_operation_knows_all_copies_of_its_edges_and_its_pieces():
    text = f"{TWO}  it: {{sew: front.side, to: back.side}}\n"
    op = construction(text).main("it")
    assert {(s.piece, s.half) for s in op.segments} == {
        ("front", "a"),
        ("front", "b"),
        ("back", "a"),
        ("back", "b"),
    }
    assert op.pieces == {"front", "back"}


# -- the finish that nobody needs --------------------------------------------------------------

OPEN_SEAM = "  it: {sew: front.side, to: back.side, as: pressed open}\n"


WITHOUT_FINISH = {
    "finished by an entry of their own": (
        TWO + OPEN_SEAM + "  neat: {finish: [front.side, back.side]}\n"
    ),
    "hidden inside a lining": TWO.replace("{cut: fold, edges", "{cut: fold, layer: lining, edges")
    + OPEN_SEAM,
    "on the selvage": TWO.replace("side, hem]", "side, hem], selvage: side") + OPEN_SEAM,
    "of cloth that does not ravel": TWO.replace(
        "{cut: fold, edges", "{of: jersey, cut: fold, edges"
    ).replace("fabrics: {", "fabrics: {jersey: {kind: knit}, ")
    + OPEN_SEAM,
}


@pytest.mark.parametrize("text", WITHOUT_FINISH.values(), ids=WITHOUT_FINISH.keys())
def test_a_finish_is_left_out_where_edges_are(text):
    assert expanded(text) == ["[sew] lockstitch standard", "press [press] iron"]


def test_one_side_that_ravels_is_enough_for_a_finish():
    text = TWO + OPEN_SEAM + "  neat: {finish: front.side}\n"
    assert "finish [finish] overlocker" in expanded(text)


def test_edges_finished_together_stay_so_whatever_the_cloth():
    text = TWO.replace("side, hem]", "side, hem], selvage: side")
    text += OPEN_SEAM.replace("pressed open", "finished together")
    assert "finish [finish] overlocker" in expanded(text)


def test_a_hem_turned_once_on_the_selvage_needs_no_finish():
    text = TWO.replace("side, hem]", "side, hem], selvage: hem")
    text += "  it: {hem: front.hem, turned: once}\n"
    assert [line.split()[0] for line in expanded(text)] == ["turn-up", "[hem]", "press"]


# -- what cannot be laid out ------------------------------------------------------------------


@pytest.mark.parametrize(
    ("entries", "slug"),
    [
        ("  it: {hem: front.hem, without: starch}\n", "unknown-part"),
        ("  it: {do: rest, after: hem/starch}\n  hem: {hem: front.hem}\n", "unknown-part"),
        (
            "  one: {sew: front.side, to: back.side}\n  two: {sew: front.side, to: facing.end}\n",
            "sewn-twice",
        ),
        (
            """
  it: {sew: front.side, to: back.side, part: 10 from waist}
  all: {sew: front.side, to: back.side}
""",
            "sewn-twice",
        ),
    ],
)
def test_what_cannot_be_is_reported(entries, slug):
    assert problems(TWO + entries) == [slug]


def test_a_part_left_out_by_the_author_cannot_be_waited_for():
    text = f"{TWO}  hem: {{hem: front.hem, without: press}}\n  it: {{do: go, after: hem/press}}\n"
    assert problems(text) == ["unknown-part"]


def test_sides_with_unlike_numbers_of_copies_are_reported():
    text = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {edges: [waist, side, hem]}
operations:
  it: {sew: front.side, to: back.side}
"""
    assert problems(text) == ["copies-differ"]


def test_a_seam_that_stops_before_the_hem_takes_the_edges_before_it_whole():
    text = """
pieces:
  front: {cut: fold, edges: [armhole, side, hem]}
  back: {cut: fold, edges: [armhole, side, hem]}
  sleeve: {cut: pair, edges: [cap, under-front, wrist, under-back]}
operations:
  it: {sew: [sleeve.under-front, front.side], to: [sleeve.under-back, back.side], STOP}
"""
    assert problems(text.replace("STOP", "stop: 10 before hem")) == []
    built, _ = construct(garment(text.replace("STOP", "stop: 10 before hem")))
    sewn = {(s.piece, s.place) for g in built.shapes["it"].glues for s in (g.first, g.second)}
    # The sides are split in two at the mark, of which the upper part is sewn.
    assert sewn == {("sleeve", 1), ("sleeve", 3), ("front", 1), ("back", 1)}
    assert len(built.rings.pieces["front"].edges) == 4
    assert problems(text.replace("STOP", "part: 10 from hem")) == ["part-unclear"]


def test_a_part_between_two_edges_of_one_name_is_unclear():
    text = """
pieces:
  sack: {cut: 2, edges: [top, side, foot, side]}
operations:
  it: {sew: sack.foot, to: sack, part: 10 from side}
"""
    assert problems(text) == ["part-unclear"]


def test_a_seam_with_two_parts_and_a_gap_between_is_two_entries_on_one_edge():
    text = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: fold, edges: [waist, side, hem]}
operations:
  upper: {sew: front.side, to: back.side, part: 10 from waist}
  lower: {sew: front.side, to: back.side, stop: 14 before waist}
"""
    built = construction(text)
    free = {
        built.edge_name(s) for part in built.finished.parts for loop in part.loops for s in loop
    }
    assert "front.side" in free
    assert not set(built.shapes["upper"].run) & set(built.shapes["lower"].run)


def test_what_is_sewn_twice_holds_by_its_first_seam():
    text = (
        TWO
        + """
  one: {sew: front.side, to: back.side}
  two: {sew: front.side, to: facing.end}
"""
    )
    built, _ = construct(garment(text))
    assert built.shapes["one"].glues
    assert not built.shapes["two"].glues


MADE = """
pieces:
  front: {cut: pair, worn: front, edges: [waist, side, hem, edge], spots: [pocket]}
  back: {cut: fold, edges: [waist, side, hem], slits: {slit: {at: fold | waist}}}
  facing: {cut: fold, layer: facing, edges: [waist, side, lower]}
  band: {cut: 1, strip: [attach, end, fold, end]}
  pocket: {cut: 1, edges: [mouth, side, foot, side]}
  bag: {cut: 4, layer: lining, edges: [attach, round]}
  welt: {cut: 1, strip: [attach, end, fold, end]}
  binding: {cut: 1, strip: [attach, end, fold, end]}
  underlap: {cut: 1, strip: [attach, foot, fold, top]}
  tower: {cut: 1, strip: [attach, top, fold, foot]}
  tie: {cut: 2, edges: [end, long, end, long]}
fabrics: {fusible: {kind: interfacing}}
notions:
  label: {kind: care label}
  grip: {kind: hook-and-loop tape}
  button: {kind: button}
  tape: {kind: bias tape}
  zip: {kind: zip}
operations:
"""
BAND = """fold [fold band] iron
          [set on] lockstitch standard
          press [press] iron
          ends [close ends] lockstitch standard
          wrap [wrap] iron
          close [close band] lockstitch standard"""


@pytest.mark.parametrize(
    ("entry", "recipe"),
    [
        ("{band: front.waist, with: band}", BAND),
        (
            "{band: front.waist, with: band, ends: open, close: by hand}",
            BAND.replace("ends [close ends] lockstitch standard", "").replace(
                "close [close band] lockstitch standard", "close [close band] hand"
            ),
        ),
        (
            "{band: front.waist, with: band, ends: joined, close: in one seam}",
            """join [close ends] lockstitch standard
               fold [fold band] iron
               [set on] lockstitch standard
               finish [finish] overlocker
               press [press] iron""",
        ),
        (
            "{bind: front.hem, with: tape, topstitch: yes}",
            """[set on] lockstitch standard
               press [press] iron
               wrap [wrap] iron
               close [close band] lockstitch standard
               topstitch [topstitch] lockstitch standard""",
        ),
        (
            "{patch pocket: pocket, at: front.pocket, open: mouth}",
            """mouth-turn-up [turn up] iron
               mouth [hem] lockstitch standard
               press-under [press under] iron
               [stitch on] lockstitch standard""",
        ),
        (
            "{in-seam pocket: bag, in: front.side}",
            """finish [finish] overlocker
               [set on] lockstitch standard
               press [press] iron""",
        ),
        (
            "{welt pocket: welt, with: bag, at: front.pocket}",
            """fold [fold band] iron
               [stitch on] lockstitch standard
               slash [slash] table
               turn [turn] iron
               bag [close band] lockstitch standard
               ends [close ends] lockstitch standard""",
        ),
        (
            "{continuous placket: back.slit, with: binding}",
            """fold [fold band] iron
               slash [slash] table
               [set on] lockstitch standard
               wrap [wrap] iron
               close [close band] lockstitch standard""",
        ),
        (
            "{sew: front.side, to: back.side, as: flat-felled}",
            """[sew] lockstitch standard
               press [press] iron
               trim [trim] table
               turn-under [press over] iron
               fell [enclose] lockstitch standard""",
        ),
        (
            "{sew: front.side, to: back.side, as: lapped, topstitch: front}",
            """finish [finish] overlocker
               press-under [press under] iron
               [sew] lockstitch standard
               press [press] iron
               topstitch [topstitch] lockstitch standard""",
        ),
        (
            "{sew: front.side, to: back.side, as: bound}",
            """[sew] lockstitch standard
               bind [finish] lockstitch standard
               press [press] iron""",
        ),
        (
            "{sew: front.side, to: back.side, as: overlocked}",
            """[sew] overlocker
               press [press] iron""",
        ),
        (
            "{sew: back.waist, to: facing.waist, as: enclosed}",
            """[sew] lockstitch standard
               trim [trim] table
               clip [clip] table
               press [press] iron
               turn [turn] iron""",
        ),
        (
            "{strap: tie}",
            """[make strap] lockstitch standard
               turn [turn] table
               press [press] iron""",
        ),
        (
            "{strap: tie, method: folded, topstitch: yes}",
            """fold [fold band] iron
               [make strap] lockstitch standard
               topstitch [topstitch] lockstitch standard""",
        ),
        ("{slash: back.slit}", "[slash] table"),
        ("{hold: back.waist, with: facing}", "[hold] lockstitch standard"),
        ("{box corner: [front.side, front.hem], width: 6}", "[box] lockstitch standard"),
        ("{attach: label, at: front.side}", "[stitch on] lockstitch standard"),
        ("{attach: tie, at: front.side}", "[stitch on] lockstitch standard"),
        ("{attach: button, to: front@left}", "[attach] hand"),
        ("{attach: grip, at: front.edge}", "[attach] hand"),
        ("{open: zip}", "[open] table"),
        ("{wait: 24 hours, on: front}", "[wait] table"),
        ("{pretreat: all}", "[pretreat] table"),
        ("{cut: all}", "[cut] table"),
        ("{mark: front}", "[mark] table"),
        ("{grade: front.side}", "[grade] table"),
        ("{fold: front.edge}", "[fold] iron"),
        ("{unfold: front.edge}", "[unfold] table"),
        ("{nest: front}", "[nest] table"),
        ("{roll: front}", "[roll] table"),
        ("{send out: front}", "[send out] table"),
    ],
)
def test_a_verb_of_bands_pockets_and_plackets_expands_likewise(entry, recipe):
    wanted = [line.strip() for line in recipe.splitlines() if line.strip()]
    built, _ = construct(garment(f"{MADE}  it: {entry}\n"))
    assert written(built, "it") == wanted


@pytest.mark.parametrize(
    "entry",
    [
        "band: front.waist, with: band",
        "patch pocket: pocket, at: front.pocket, open: mouth",
        "in-seam pocket: bag, in: front.side",
        "welt pocket: welt, with: bag, at: front.pocket",
        "continuous placket: back.slit, with: binding",
        "sew: front.side, to: back.side, as: flat-felled",
        "sew: front.side, to: back.side, as: lapped",
        "sew: front.side, to: back.side, as: bound",
        "strap: tie",
    ],
)
def test_each_part_but_the_one_that_bears_the_name_can_be_left_out(entry):
    whole, _ = construct(garment(f"{MADE}  it: {{{entry}}}\n"))
    parts = [op.part for op in whole.of_entry["it"]]
    for part in filter(None, parts):
        rest, found = construct(garment(f"{MADE}  it: {{{entry}, without: {part}}}\n"))
        assert [op.part for op in rest.of_entry["it"]] == [p for p in parts if p != part]
        assert "unknown-part" not in {problem.slug for problem in found}


def test_the_ends_of_a_band_that_another_entry_names_are_no_business_of_the_band():
    text = MADE + "  it: {band: front.waist, with: band}\n  also: {hem: band.end}\n"
    built, _ = construct(garment(text))
    assert "ends" not in {op.part for op in built.of_entry["it"]}


def test_buttonholes_on_several_pieces_are_as_many_operations():
    built, _ = construct(
        garment(MADE + "  it: {buttonhole: [band, front@left, front], number: 6}\n")
    )
    assert [(op.id, op.pieces) for op in built.of_entry["it"]] == [
        ("it", {"band"}),
        ("it/front", {"front"}),
    ]


def test_a_seam_of_your_own_has_the_parts_that_you_list():
    text = "recipes: {welted: [sew, grade, press]}\n" + MADE.lstrip()
    text += "  it: {sew: front.side, to: back.side, as: welted, topstitch: front}\n"
    built, _ = construct(garment(text))
    assert [op.part for op in built.of_entry["it"]] == ["", "grade", "press", "topstitch"]


def test_what_is_held_lies_in_everything_that_its_edge_goes_into():
    text = MADE + "  hold: {hold: back.waist, with: facing}\n  it: {hem: back.waist}\n"
    built, _ = construct(garment(text))
    assert {s.piece for s in built.op["it"].segments} == {"back", "facing"}


@pytest.mark.parametrize("binding", ["tape", "band"])
def test_a_bound_seam_names_what_binds_it(binding):
    text = MADE + f"  it: {{sew: front.side, to: back.side, as: bound, with: {binding}}}\n"
    built, _ = construct(garment(text))
    sew, bind = built.op["it"], built.op["it/bind"]
    assert "band" not in sew.pieces
    assert ("band" in bind.pieces) == (binding == "band")
    assert ("tape" in bind.notions) == (binding == "tape")
