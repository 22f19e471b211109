"""The lay plans of the garments: drawn from the shapes, with room for every piece."""

from itertools import combinations

import pytest
from garments.shipped import FOLDER, GARMENTS, opened

from seqplan.model.piece import Cut
from seqplan.shape.outline import lay

pytest.importorskip("shapely")
from tools import lay_plan

PLANS = [
    pytest.param(path.stem, plan, id=plan.picture.file)
    for path in GARMENTS
    for plan in opened(path.stem).loaded.garment.plans
]
AMOUNTS = [
    pytest.param(path.stem, fabric.id, amount, id=f"{path.stem} {fabric.id} {amount.width.mm}")
    for path in GARMENTS
    for fabric in opened(path.stem).loaded.garment.fabrics
    for amount in fabric.amounts
    if any(
        piece.fabric == fabric.id and lay(piece)
        for piece in opened(path.stem).loaded.garment.pieces
    )
]


def test_two_garments_have_a_lay_plan_and_a_mark():
    shown = [path.stem for path in GARMENTS if opened(path.stem).loaded.garment.plans]
    assert len(shown) >= 2
    assert all(opened(name).loaded.garment.mark for name in shown)


def test_the_pictures_are_those_of_the_shapes():
    for path, text in lay_plan.written().items():
        assert path.parent == FOLDER
        assert path.read_text(encoding="utf-8") == text, path.name


@pytest.mark.parametrize(("name", "fabric", "amount"), AMOUNTS)
def test_all_pieces_lie_on_the_cloth_and_none_on_another(name, fabric, amount):
    placed = lay_plan.lay_out(opened(name).garment, fabric, float(amount.width.mm))
    pieces = [p for p in opened(name).loaded.garment.pieces if p.fabric == fabric]
    assert {item.piece.id for item in placed} == {piece.id for piece in pieces}
    assert lay_plan.needed(placed) <= float(amount.length.mm)
    for item in placed:
        left, low, _, top = item.cutting.bounds
        assert left > -0.01
        assert top <= float(amount.width.mm) / 2 - lay_plan.GAP + 0.01
        assert abs(low) < 0.01 if item.piece.cut is Cut.FOLD else low >= lay_plan.GAP - 0.01
        assert item.cutting.buffer(0.1).contains(item.stitching)
    for one, other in combinations(placed, 2):
        assert one.cutting.distance(other.cutting) > lay_plan.GAP - 0.1


@pytest.mark.parametrize(("name", "plan"), PLANS)
def test_a_plan_shows_every_piece_of_its_fabric(name, plan):
    text = plan.picture.data.decode()
    for piece in opened(name).loaded.garment.pieces:
        if piece.fabric == plan.fabric:
            assert f">{piece.title.capitalize()}<" in text
