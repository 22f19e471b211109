"""What every shipped garment keeps to: it is short, clean, told, and can be made."""

import pytest
from cli.running import run
from garments.shipped import GARMENTS, opened

from seqplan.base.strength import Strength

MOST_OPERATIONS = {"net-loft-shirt": 24, "pilot-boat-trousers": 30, "ferry-waistcoat": 22}
OUTPUTS = [
    "batch-steps.txt",
    "booklet-steps.txt",
    "booklet.html",
    "booklet.pdf",
    "check.txt",
    "graph.svg",
]


def variants():
    """Every garment with every option of its choices once."""
    for path in GARMENTS:
        for choice in opened(path.stem).loaded.garment.choices or [None]:
            for option in choice.options if choice else [None]:
                picks = ((choice.id, option),) if choice else ()
                yield pytest.param(path.stem, picks, id=f"{path.stem} {option or ''}")


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_a_garment_opens_with_a_comment_that_says_what_it_shows(path):
    assert path.read_text(encoding="utf-8").startswith("# ")


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_a_garment_says_after_twice_at_most_and_then_why(path):
    said = [entry for entry in opened(path.stem).loaded.garment.entries if entry.after]
    assert len(said) <= 2
    assert all(entry.because for entry in said)


@pytest.mark.parametrize(("name", "most"), MOST_OPERATIONS.items())
def test_a_garment_is_written_in_few_operations(name, most):
    assert len(opened(name).loaded.garment.entries) <= most


@pytest.mark.parametrize(("name", "picks"), list(variants()))
def test_a_garment_checks_clean_with_every_option(name, picks):
    assert opened(name, picks).findings == ()


@pytest.mark.parametrize(("name", "picks"), list(variants()))
def test_a_garment_has_an_order_for_a_booklet_and_one_for_a_batch(name, picks):
    garment = opened(name, picks)
    planner = garment.planner
    for plan in (planner.booklet(), planner.batch()):
        position = {id_: place for place, id_ in enumerate(plan.order)}
        assert sorted(position) == sorted(garment.garment.ids)
        binding = [r for r in garment.reasons if r.strength is not Strength.PREFER]
        assert all(reason.is_held(position) for reason in binding)


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_everything_can_be_made_for_a_garment(path, tmp_path):
    result = run("make", path, "-o", tmp_path)
    assert result.exit_code == 0, result.output
    made = {file.name: file.stat().st_size for file in tmp_path.rglob("*") if file.is_file()}
    assert set(OUTPUTS) <= set(made)
    assert all(made.values())
    if not opened(path.stem).loaded.garment.choices:
        assert sorted(made) == OUTPUTS
