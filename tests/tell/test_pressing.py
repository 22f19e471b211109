"""To which side allowances are pressed where nobody says, in words and in the picture."""

import pytest
import yaml
from rules.reasoning import construction

from seqplan.draw.section import section
from seqplan.rehearse.work import Work
from seqplan.tell.pressing import pressed_side
from seqplan.tell.step import tell_operation

PIECES = {
    "front": {"of": "cloth", "worn": "front", "cut": "fold", "edges": ["top", "side", "foot"]},
    "back": {"of": "cloth", "worn": "back", "cut": "fold", "edges": ["top", "side", "foot"]},
    "upper": {"of": "cloth", "cut": 1, "edges": ["top", "right", "foot", "left"]},
    "tier": {"of": "cloth", "cut": 1, "edges": ["top", "right", "foot", "left"]},
    "half": {"of": "cloth", "cut": "pair", "edges": ["top", "side", "foot", "centre"]},
    "bag": {"of": "cloth", "cut": 4, "edges": ["straight", "round"]},
}
SIDES = {"sew": "front.side", "to": "back.side", "as": "finished together"}
CASES = {
    "to the back": ({"seam": SIDES}, ("back",), "towards the back"),
    "with the bag to the front": (
        {"pockets": {"in-seam pocket": "bag", "in": ["front.side", "back.side"]}, "seam": SIDES},
        ("front",),
        "towards the front",
    ),
    "to the topstitched side": (
        {"seam": {**SIDES, "topstitch": "front"}},
        ("front",),
        "towards the front",
    ),
    "away from gathers": (
        {
            "gathers": {"gather": "tier.top"},
            "seam": {"sew": "tier.top", "to": "upper.foot", "as": "finished together"},
        },
        ("upper",),
        "towards the upper piece",
    ),
    "to what is named first": (
        {"seam": {"sew": "tier.top", "to": "upper.foot", "as": "finished together"}},
        ("tier",),
        "towards the tier piece",
    ),
    "to either": (
        {"seam": {"sew": "half.centre", "as": "finished together"}},
        (),
        "to one side (either will do)",
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_sentence_and_picture_press_to_the_same_side(name):
    entries, pieces, words = CASES[name]
    used = {
        word.split(".")[0]
        for entry in entries.values()
        for value in entry.values()
        for word in (value if isinstance(value, list) else [value])
    }
    c = construction(
        yaml.safe_dump(
            {
                "garment": name,
                "allowance": 1.5,
                "fabrics": {"cloth": {"kind": "woven"}},
                "pieces": {id_: piece for id_, piece in PIECES.items() if id_ in used},
                "operations": entries,
            },
            sort_keys=False,
        )
    )
    press = c.op["seam/press"]
    before = frozenset(c.ids[: c.ids.index(press.id)])
    assert pressed_side(c, c.garment.entry["seam"]) == pieces
    assert words in " ".join(tell_operation(c, press, before).texts)

    work = Work(c)
    for id_ in c.ids[: c.ids.index(press.id) + 1]:
        work.do(c.op[id_])
    drawn = section(c, work, press)
    seam = next(row for row in drawn.rows if row.op == "seam")
    x = seam.start[0] + (3 if seam.start[0] > 0 else -3)
    outside = drawn.lying_at(x)[0]
    assert len(drawn.lying_at(x)) == 3
    assert not pieces or outside.material.key in pieces
