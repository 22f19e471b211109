"""Another way of sewing is offered where it lets the order stay, and only there."""

from shutil import copy

import pytest
from garments.shipped import GARMENTS, opened

from seqplan.explain.rehearsed import tell_repairs
from seqplan.pipeline import open_garment
from seqplan.rehearse.methods import other_methods
from seqplan.rehearse.walk import rehearse


def moved(c, entry, anchor):
    """The written order with an entry moved above another."""
    rest = [id_ for id_ in c.ids if c.op[id_].entry != entry]
    place = next(number for number, id_ in enumerate(rest) if c.op[id_].entry == anchor)
    return (*rest[:place], *(id_ for id_ in c.ids if c.op[id_].entry == entry), *rest[place:])


@pytest.mark.parametrize(
    ("entry", "anchor", "offer"),
    [
        ("sides", "sleeve-hems", "Leave `flat` out of `sleeve-hems`; the order can stay."),
        ("hem", "sides", "Say `flat: yes` in `hem`; the order can stay."),
    ],
)
def test_a_hem_can_be_sewn_flat_or_in_the_round(entry, anchor, offer):
    c = opened("lamp-room-tee").garment
    assert offer in tell_repairs(c, rehearse(c, moved(c, entry, anchor)))


def test_a_run_that_wants_its_seam_is_offered_no_other_method():
    c = opened("lamp-room-tee").garment
    stuck = rehearse(c, moved(c, "sides", "sleeves"))
    assert not stuck.is_clean
    assert other_methods(c, stuck) == ()


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_what_is_offered_helps(path, tmp_path):
    """Whatever is offered for an entry that is moved stands the check as a file of its own."""
    c = opened(path.stem).garment
    text = path.read_text(encoding="utf-8")
    for picture in path.parent.glob("*.svg"):
        copy(picture, tmp_path)
    for entry in c.of_entry:
        for anchor in c.of_entry:
            stuck = rehearse(c, moved(c, entry, anchor)) if anchor != entry else None
            if stuck is None or stuck.is_clean:
                continue
            for method in other_methods(c, stuck):
                line = next(
                    each for each in text.splitlines() if each.startswith(f"  {method.entry}:")
                )
                changed = _said(line, method)
                file = tmp_path / "changed.yaml"
                file.write_text(text.replace(line, changed), encoding="utf-8")
                again = rehearse(open_garment(file).garment, stuck.order)
                assert (again.troubles, again.debts) == ((), ())


def _said(line, method):
    """A line of a file with another method, or without the one it has."""
    head, _, tail = line.rpartition("}")
    parts = [part for part in head.split(", ") if not part.startswith(f"{method.key}:")]
    if method.value:
        parts.append(f"{method.key}: {method.value}")
    return ", ".join(parts) + "}" + tail
