"""When a sentence says what becomes of a hem that is not as long as what it lies on."""

from copy import deepcopy

import pytest
import yaml
from rules.reasoning import construction

from seqplan.tell.step import tell_operation

SQUARE = [[0, 0], [30, 0], [30, 60], [0, 60]]
FLARED = [[0, 0], [30, 0], [38, 60], [0, 60]]
ROUNDED = [[0, 0], [30, 0], [30, 60], {"curve": [[20, 63], [10, 63]]}, [0, 62]]
SLANTED = [[0, 0], [30, 0], [30, 60], [0, 70]]


def turned_up(shape, **hem):
    panel = {"of": "cloth", "cut": "fold", "edges": ["waist", "side", "hem"]}
    panel |= {"shape": shape} if shape else {}
    c = construction(
        yaml.safe_dump(
            {
                "garment": "Hemmed",
                "allowance": 1.5,
                "fabrics": {"cloth": {"kind": "woven"}},
                "pieces": {"front": panel, "back": deepcopy(panel)},
                "operations": {
                    "sides": {"sew": "front.side", "to": "back.side", "as": "pressed open"},
                    "hem": {"hem": ["front.hem", "back.hem"], "depth": 3, **hem},
                },
            },
            sort_keys=False,
        )
    )
    op = c.op["hem/turn-up"]
    return " ".join(tell_operation(c, op, c.ids[: c.ids.index(op.id)]).texts)


@pytest.mark.parametrize(
    ("shape", "is_told"),
    [(None, True), (SQUARE, False), (FLARED, True), (ROUNDED, True), (SLANTED, True)],
    ids=["unknown", "square", "flared", "rounded", "slanted"],
)
def test_a_deep_hem_is_eased_unless_it_is_known_to_be_square(shape, is_told):
    assert ("draw it in" in turned_up(shape)) == is_told


@pytest.mark.parametrize("hem", [{"depth": 1}, {"flat": "yes"}], ids=["narrow", "flat"])
def test_a_narrow_or_flat_hem_is_not_eased(hem):
    assert "draw it in" not in turned_up(FLARED, **hem)
