"""Run commands in tests, and garments to run them on."""

from pathlib import Path

from click.testing import CliRunner, Result

from seqplan.cli.app import seqplan

ROOT = Path(__file__).parents[2]
GARMENTS = sorted((ROOT / "garments").glob("*.yaml"))
SKIRT = ROOT / "garments" / "breakwater-skirt.yaml"


def run(*words: object) -> Result:
    return CliRunner().invoke(seqplan, [str(word) for word in words])


def broken_skirt(folder: Path) -> Path:
    """Write the skirt with its hem above the seam that it runs over."""
    lines = SKIRT.read_text().splitlines()
    hem = next(line for line in lines if line.startswith("  hem:"))
    lines.remove(hem)
    lines.insert(next(i for i, line in enumerate(lines) if line.startswith("  centre-back:")), hem)
    path = folder / "broken.yaml"
    path.write_text("\n".join(lines) + "\n")
    return path


def impossible(folder: Path) -> Path:
    """Write a garment that no order can sew."""
    path = folder / "impossible.yaml"
    path.write_text(
        "garment: Slipway test\n"
        "operations:\n"
        "  a: {do: fold, after: c}\n"
        "  b: {do: press, after: a}\n"
        "  c: {do: stitch, after: b}\n"
    )
    return path


def stuck(folder: Path) -> Path:
    """Write a bag whose reasons admit an order, and whose cord finds no way in."""
    path = folder / "stuck.yaml"
    path.write_text(
        "garment: Mooring bag\n"
        "pieces:\n"
        "  bag: {cut: 2, edges: [top, side, foot, side]}\n"
        "notions:\n"
        "  cord: {kind: cord, length: 120}\n"
        "operations:\n"
        "  seams: {sew: [bag.side, bag.foot], to: bag, as: finished together}\n"
        "  channel: {casing: bag.top, depth: 2.5, turned: twice}\n"
        "  cord: {insert: cord, in: channel}\n"
    )
    return path
