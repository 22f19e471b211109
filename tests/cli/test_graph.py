"""The graph as a file: its format is the end of its name."""

import pytest
from cli.running import SKIRT, run

STARTS = {".svg": b"<svg", ".pdf": b"%PDF-", ".png": b"\x89PNG"}


@pytest.mark.parametrize("suffix", STARTS)
def test_the_end_of_the_name_is_the_format(suffix, tmp_path):
    for name in ("graph", "GRAPH"):
        out = tmp_path / f"{name}{suffix if name == 'graph' else suffix.upper()}"
        result = run("graph", SKIRT, "-o", out)
        assert (result.exit_code, result.output) == (0, "")
        assert out.read_bytes().startswith(STARTS[suffix])
    one, other = (path.read_bytes() for path in sorted(tmp_path.iterdir()))
    assert one == other


@pytest.mark.parametrize("name", ["graph", "graph.jpg", "svg", ".svg"])
def test_another_end_is_refused_with_those_that_there_are(name, tmp_path):
    result = run("graph", SKIRT, "-o", tmp_path / name)
    assert result.exit_code == 2
    assert ".svg, .pdf, .png" in " ".join(result.output.split())
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("suffix", [".pdf", ".png"])
def test_paper_changes_the_sheet(suffix, tmp_path):
    made = set()
    for paper in ([], ["--paper", "a4"], ["--paper", "letter"]):
        out = tmp_path / f"graph{suffix}"
        assert run("graph", SKIRT, *paper, "-o", out).exit_code == 0
        made.add(out.read_bytes())
    assert len(made) == 3


def test_an_svg_has_no_paper(tmp_path):
    out = tmp_path / "graph.svg"
    result = run("graph", SKIRT, "--paper", "a4", "-o", out)
    assert result.exit_code == 2
    assert "leave `--paper` out" in result.output
    assert not out.exists()
