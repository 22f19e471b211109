"""The booklet in a browser: offline, quiet, nothing wider than the page."""

from dataclasses import replace
from pathlib import Path

import pytest
from paper.documents import every_block
from tell.sampler import SHIPPED, booklet, document, sheet

from seqplan.render.handout.html import html
from seqplan.render.handout.paper import Paper

CHROMIUM = Path("/usr/bin/chromium")

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(not CHROMIUM.exists(), reason=f"there is no chromium at {CHROMIUM}"),
]

WIDTHS = (360, 640, 718, 800, 1200)
"""Pixels: a telephone, a page at 200 %, the text width of A4, a small window, a large one."""

LETTER = (702, 939)
"""Pixels within the margins of a Letter page: 186 by 248 mm."""
HEADINGS = 75
"""Pixels of the headings that stand above the first step."""


@pytest.fixture(scope="module")
def browser():
    playwright = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
    with playwright.sync_playwright() as running:
        opened = running.chromium.launch(executable_path=str(CHROMIUM), args=["--no-sandbox"])
        yield opened
        opened.close()


@pytest.fixture
def page(browser):
    context = browser.new_context(offline=True)
    opened = context.new_page()
    opened.messages, opened.requested = [], []
    opened.on("console", lambda message: opened.messages.append(message.text))
    opened.on("pageerror", lambda error: opened.messages.append(str(error)))
    opened.on("request", lambda request: opened.requested.append(request.url))
    yield opened
    context.close()


@pytest.fixture(params=[*SHIPPED[::2], "dress"])
def opened(request, page, tmp_path):
    """A page that is open in the browser, with the sheet it was made from."""
    path = tmp_path / "booklet.html"
    path.write_text(booklet(request.param), encoding="utf-8")
    page.goto(path.as_uri())
    return page, sheet(request.param)


def overflow(page):
    return page.evaluate(
        "document.documentElement.scrollWidth - document.documentElement.clientWidth"
    )


def test_the_booklet_opens_offline_and_quietly(opened):
    page, made = opened
    assert page.title() == f"{made.title}: Sewing booklet"
    assert page.get_by_role("heading", level=1).inner_text() == made.title
    assert page.get_by_role("heading", level=4).count() == made.steps
    assert page.get_by_role("checkbox").count() >= made.operations
    assert page.messages == []
    assert len([url for url in page.requested if not url.startswith("data:")]) == 1


def test_a_box_can_be_ticked(opened):
    page, made = opened
    step = made.groups[0].steps[0]
    where = made.station[step.sentences[0].station].title
    box = page.get_by_role("checkbox", name=where).first
    box.check()
    assert box.is_checked()


@pytest.mark.parametrize("media", ["screen", "print"])
def test_nothing_is_wider_than_the_page(opened, media):
    page, _ = opened
    page.emulate_media(media=media)
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 900})
        assert overflow(page) <= 0, width


def test_no_text_is_cut_off(opened):
    page, _ = opened
    page.set_viewport_size({"width": 718, "height": 1000})
    cut_off = page.evaluate(
        """[...document.querySelectorAll('p, li, dd, dt, td, th, h2, h3, h4')]
           .filter(e => getComputedStyle(e).display != 'inline')
           .filter(e => e.scrollWidth > e.clientWidth + 1)
           .map(e => e.textContent)"""
    )
    assert cut_off == []


def test_what_stands_beside_a_picture_fits_on_a_page_with_it(opened):
    """A step may go on overleaf, but only between two of its rows."""
    page, _ = opened
    page.emulate_media(media="print")
    page.set_viewport_size({"width": LETTER[0], "height": LETTER[1]})
    heights = page.evaluate(
        "[...document.querySelectorAll('.row')].map(e => e.getBoundingClientRect().height)"
    )
    assert max(heights) <= LETTER[1] - HEADINGS


@pytest.mark.parametrize(
    ("paper", "box"), [(Paper.A4, b"[0 0 594.95996 841.91998]"), (Paper.LETTER, b"[0 0 612 792]")]
)
def test_it_prints_on_the_paper_it_is_made_for(page, paper, box):
    page.set_content(booklet("breakwater-skirt", paper))
    printed = page.pdf(prefer_css_page_size=True, print_background=True, tagged=True)
    assert printed.startswith(b"%PDF")
    assert printed.count(b"/Type /Page\n") == printed.count(box)


OVERLAPPING = """
() => {
  const boxes = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const node = walker.currentNode;
    if (!node.data.trim() || node.parentElement.closest('.unseen, svg')) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const r of range.getClientRects()) boxes.push([r, node]);
  }
  for (const e of document.querySelectorAll('svg, .tick, img, .mark'))
    boxes.push([e.getBoundingClientRect(), e]);
  const found = [];
  const holds = (a, b) => a.contains && a.contains(b);
  for (let i = 0; i < boxes.length; i++)
    for (let j = i + 1; j < boxes.length; j++) {
      const [a, one] = boxes[i], [b, other] = boxes[j];
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (wide > 1 && high > 3 && !holds(one, other) && !holds(other, one))
        found.push([one.textContent.slice(0, 40), other.textContent.slice(0, 40)]);
    }
  return found;
}
"""


@pytest.mark.parametrize("media", ["screen", "print"])
@pytest.mark.parametrize("width", [360, 718])
def test_nothing_lies_on_anything_else(opened, media, width):
    page, _ = opened
    page.emulate_media(media=media)
    page.set_viewport_size({"width": width, "height": 1000})
    assert page.evaluate(OVERLAPPING) == []


CONTRAST = """
() => {
  const parts = (text) => text.match(/[\\d.]+/g).map(Number);
  const light = ([r, g, b]) => [r, g, b].map((v) => v / 255)
    .map((v) => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)
    .reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
  const ground = (e) => {
    for (; e; e = e.parentElement) {
      const found = parts(getComputedStyle(e).backgroundColor);
      if (found.length < 4 || found[3] > 0) return found;
    }
    return [255, 255, 255];
  };
  const found = [];
  for (const e of document.querySelectorAll('body *')) {
    const texts = [...e.childNodes].filter((n) => n.nodeType == 3 && n.data.trim());
    if (!texts.length || e.closest('svg, .unseen')) continue;
    const [a, b] = [light(parts(getComputedStyle(e).color)), light(ground(e))];
    const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    if (ratio < 4.5) found.push([e.textContent.slice(0, 40), ratio]);
  }
  return found;
}
"""


def test_every_text_stands_out_from_its_ground(opened):
    page, _ = opened
    assert page.evaluate(CONTRAST) == []


@pytest.mark.parametrize("is_large", [False, True])
def test_a_page_of_every_block_is_sound(page, is_large, tmp_path):
    path = tmp_path / "page.html"
    path.write_text(html(replace(every_block(), is_large=is_large), Paper.A4), encoding="utf-8")
    page.goto(path.as_uri())
    for media in ("screen", "print"):
        page.emulate_media(media=media)
        for width in WIDTHS:
            page.set_viewport_size({"width": width, "height": 900})
            assert overflow(page) <= 0, (media, width)
            assert page.evaluate(OVERLAPPING) == []
    assert page.evaluate(CONTRAST) == []
    assert page.messages == []
    assert len([url for url in page.requested if not url.startswith("data:")]) == 1


def test_large_print_is_set_in_18_points(page):
    page.set_content(html(replace(document("rope-walk-bag"), is_large=True), Paper.A4))
    page.emulate_media(media="print")
    sizes = page.evaluate(
        "[...document.querySelectorAll('.told > p:not(.where), .words, .check, li, td')]"
        ".map(e => parseFloat(getComputedStyle(e).fontSize))"
    )
    assert sizes
    assert min(sizes) >= 24
