"""Charts for tests, and how to read a picture back."""

import re
import xml.etree.ElementTree as ET
from dataclasses import dataclass
from pathlib import Path

from benchmarks.bench_processes import coverall
from cli.running import GARMENTS

from seqplan.explain.chart import Lanes
from seqplan.pipeline import Opened, draw_graph, open_garment

SVG = "{http://www.w3.org/2000/svg}"
BOTH = [(path, lanes) for path in GARMENTS for lanes in Lanes]
NAMES = [f"{path.stem} by {lanes.value}" for path, lanes in BOTH]


@dataclass(frozen=True)
class Picture:
    """An SVG read back: its text, and the scale at which it is printed."""

    svg: str
    root: ET.Element
    scale: float

    @classmethod
    def of(cls, svg: str) -> "Picture":
        root = ET.fromstring(svg)
        width = float(root.get("width", "").removesuffix("pt"))
        return cls(svg, root, width / float(root.get("viewBox", "").split()[2]))

    @property
    def words(self) -> list[str]:
        return ["".join(node.itertext()).strip() for node in self.root.iter(f"{SVG}text")]

    @property
    def titles(self) -> str:
        return "\n".join(node.text or "" for node in self.root.iter(f"{SVG}title"))


def opened(folder: Path, text: str) -> Opened:
    path = folder / "garment.yaml"
    path.write_text(text, encoding="utf-8")
    return open_garment(path)


def drawn(found: Opened, lanes: Lanes = Lanes.UNIT) -> Picture:
    return Picture.of(draw_graph(found, lanes))


def coat() -> str:
    """A connected garment of about sixty operations, of our own invention."""
    lines = ["garment: Harbour-master coat", "allowance: 1.5", "pieces:"]
    for layer, kind in (("", "shell"), ("lining-", "lining")):
        head = f"{{cut: pair, layer: {kind}, edges: [neck, shoulder, side, hem"
        lines += [f"  {layer}front: {head}, edge]}}", f"  {layer}back: {head}, centre]}}"]
    lines += [
        "  collar: {cut: fold, edges: [neck, outer]}",
        "  collar-under: {like: collar, layer: facing}",
        "  pocket: {cut: pair, edges: [mouth, round]}",
        "operations:",
        "  pocket-mouths: {hem: pocket.mouth, depth: 2, turned: once}",
        "  pocket-round: {finish: pocket.round}",
        "  pockets: {do: Stitch the pockets on, at: pocket.round, on: front, station: lockstitch}",
    ]
    both = "as: finished together"
    for layer in ("", "lining-"):
        lines += [
            f"  {layer}centre: {{sew: {layer}back.centre, as: pressed open}}",
            f"  {layer}shoulders: {{sew: {layer}front.shoulder, to: {layer}back.shoulder, {both}}}",
            f"  {layer}sides: {{sew: {layer}front.side, to: {layer}back.side, {both}}}",
            f"  {layer}stay: {{staystitch: [{layer}front.neck, {layer}back.neck]}}",
        ]
    lines += [
        "  fuse-collar: {fuse: collar}",
        "  collar-round: {sew: collar.outer, to: collar-under, as: faced}",
        "  fronts: {sew: [front.edge], to: [lining-front.edge], as: faced}",
        "  hem: {hem: [front.hem, back.hem], depth: 4, turned: once, by: hand}",
        "  lining-hem: {hem: [lining-front.hem, lining-back.hem], depth: 2}",
        "  inner-neck: {do: Tack the necks together, at: collar.neck, after: hem, station: hand}",
    ]
    for number in range(1, 7):
        after = f"button-{number - 1}" if number > 1 else "fronts"
        lines.append(
            f"  button-{number}: {{do: Sew button {number} on, after: {after}, station: hand}}"
        )
    return "\n".join(lines) + "\n"


def word_sizes(picture: Picture) -> list[float]:
    """The sizes in which words and figures print on A4, in points; signs are left out."""
    return [
        float(node.get("font-size", "0")) * picture.scale
        for node in picture.root.iter(f"{SVG}text")
        if re.search(r"\w", "".join(node.itertext()))
    ]


__all__ = ["BOTH", "NAMES", "SVG", "Picture", "coat", "coverall", "drawn", "opened", "word_sizes"]
