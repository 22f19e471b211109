"""Whatever can be written can be checked, and what can be sewn is planned so that it rehearses."""

from hypothesis import given, settings
from load.strategies_garment import garments

from seqplan.load.dump import dump
from seqplan.pipeline import open_garment
from seqplan.rehearse.walk import rehearse


@settings(max_examples=60)
@given(garment=garments())
def test_any_garment_is_checked_to_the_end(garment, tmp_path_factory):
    path = tmp_path_factory.getbasetemp() / "any.yaml"
    path.write_text(dump(garment), encoding="utf-8")
    opened = open_garment(path)
    assert all(finding.span is not None for finding in opened.findings)
    if opened.can_be_sewn:
        found = rehearse(opened.garment, opened.planner.booklet().order)
        assert found.is_clean, found.troubles
