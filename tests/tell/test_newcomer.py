"""What somebody who sews by the sentences alone would do wrong, if they said less."""

from rules.reasoning import construction

from seqplan.tell.names import name_seam_plainly
from seqplan.tell.step import tell_operation

POUCH = """
garment: Lined pouch
allowance: 1
fabrics: {canvas: {kind: woven}}
pieces:
  outer:  {of: canvas, cut: 2, edges: [top, side, foot, side]}
  lining: {of: canvas, cut: 2, layer: lining, edges: [top, side, foot, side]}
  flap:   {of: canvas, cut: 1, edges: [round, end]}
  flap-inner: {of: canvas, like: flap, layer: facing}
  tab:    {of: canvas, cut: 1, edges: [end, long, end, long]}
  loop:   {of: canvas, cut: 4, edges: [end, long, end, long]}
  sleeve: {of: canvas, cut: pair, edges: [cap, underarm-back, wrist, underarm-front]}
  skirt:  {of: canvas, cut: fold, edges: [waist, side, hem]}
  front:
    {of: canvas, cut: fold, edges: [neck, armhole], slits: {slit: {at: fold | neck, length: 10}}}
  tape:   {of: canvas, cut: 1, strip: [attach, end, fold, end]}
notions: {zip: {kind: zip, length: 20}, button: {kind: button}, buttons: {kind: button, count: 3}}
operations:
  top:      {sew: outer.top, to: lining.top, between: zip}
  tab:      {strap: tab, method: folded, topstitch: yes}
  wide:     {strap: loop, method: folded, topstitch: 0.6}
  tab-on:   {attach: tab, at: outer.side}
  loops-on: {attach: loop, at: outer.foot}
  outside:  {sew: [outer.side, outer.foot], to: outer, as: pressed open, without: finish}
  corners:  {box corner: [outer.side, outer.foot], width: 4}
  inside:   {sew: [lining.side, lining.foot], to: lining, as: pressed open, gap: 8}
  turn:     {turn: all, through: the gap}
  close:    {close: inside}
  flap:     {sew: [flap.round, flap.end], to: flap-inner, as: enclosed, gap: 4}
  gathers:  {gather: skirt.waist}
  under:    {sew: sleeve.underarm-front, to: sleeve.underarm-back}
  caps:     {sew: sleeve.cap, to: skirt.waist}
  hem:      {hem: skirt.hem, depth: 2}
  slit:     {slash: front.slit}
  bind:     {bind: front.slit, with: tape, flat: yes}
  hole:     {buttonhole: tape, number: 1}
  one:      {attach: button, to: tape}
  more:     {attach: buttons, to: front}
"""


def told(operation, text=POUCH):
    c = construction(text)
    sentence = tell_operation(c, c.op[operation], c.ids[: c.ids.index(operation)])
    return f"{sentence.text} {sentence.check}"


def test_a_piece_sewn_to_itself_is_folded_not_laid_on_another():
    assert told("under").startswith(
        "Fold the sleeve pieces, each by itself, with right sides together, so that the underarm"
        " front edge lies on the underarm back edge of the same piece"
    )
    assert "Lay the 2 outer pieces on one another" in told("outside")


def test_a_seam_is_called_by_what_its_edges_have_in_common():
    c = construction(POUCH)
    assert name_seam_plainly(c.garment.entry["under"]) == "underarm seam"
    assert name_seam_plainly(c.garment.entry["caps"]) == "seam between cap and waist"


def test_one_tab_goes_to_one_of_several_edges():
    assert "at one of the side edges of the outer pieces" in told("tab-on")
    assert "one of" not in told("loops-on")


def test_what_hangs_on_a_seam_is_folded_away_first():
    assert told("outside").startswith("Fold the lining pieces out of the way")
    assert told("inside").startswith("Fold the outer pieces out of the way")
    assert "out of the way" not in told("top")
    apart = POUCH.replace("  top:      {sew: outer.top, to: lining.top, between: zip}\n", "")
    assert "out of the way" not in told("outside", apart)


def test_a_lining_is_pushed_inside_when_its_gap_is_closed():
    assert "push the lining inside" in told("close")
    shell = POUCH.replace(", layer: lining", "")
    assert "push the lining inside" not in told("close", shell)


def test_only_corners_whose_seams_are_finished_are_finished():
    assert "finish" not in told("corners")
    finished = POUCH.replace("as: pressed open, without: finish", "as: finished together")
    assert "finish the two raw edges together" in told("corners", finished)


def test_corners_of_an_enclosed_seam_are_cut_off():
    assert "Cut the corners off at an angle" in told("flap/trim")
    straight = POUCH.replace("sew: [flap.round, flap.end]", "sew: flap.round")
    assert "corners" not in told("flap/trim", straight)


def test_gathers_name_the_edge_that_they_are_drawn_up_to():
    assert "as long as what it will be sewn to, the cap edges of the sleeve pieces" in told(
        "gathers"
    )
    alone = POUCH.replace("  caps:     {sew: sleeve.cap, to: skirt.waist}\n", "")
    assert "as long as the one it is joined to" in told("gathers", alone)


def test_an_edge_that_goes_on_over_the_fold_is_one_edge():
    assert "the hem edge of the skirt piece" in told("hem")
    assert "the slit edges of the front piece" in told("slit")


def test_a_slit_is_drawn_apart_to_be_bound():
    assert "Draw the slit apart" in told("bind")
    plain = POUCH.replace("  hem:      {hem: skirt.hem, depth: 2}\n", "")
    plain = plain.replace("front.slit, with", "skirt.hem, with")
    assert "Draw the slit apart" not in told("bind", plain)


def test_a_strap_is_topstitched_near_its_edges_unless_the_author_says_how_far():
    assert "2 mm (⅛ in) from the edge, along the open edge over the row" in told("tab/topstitch")
    assert "6 mm (¼ in) from the edge, with" in told("wide/topstitch")


def test_one_button_and_one_buttonhole_are_told_as_one():
    assert "There is" not in told("hole")
    assert "sew the button on" in told("one")
    assert "sew the buttons on" in told("more")


def test_the_foot_stands_above_the_words_and_not_in_them():
    c = construction(POUCH)
    sentence = tell_operation(c, c.op["hole"], c.ids[: c.ids.index("hole")])
    assert sentence.foot == "buttonhole"
    assert "foot" not in sentence.text


APRON = """
garment: Apron
allowance: 1
pieces:
  bib:    {cut: fold, worn: front, edges: [top, side, waist], spots: [place]}
  facing: {like: bib, layer: facing}
  band:   {cut: fold, edges: [top, end, bottom]}
  inner:  {like: band, layer: facing}
  skirt:  {cut: fold, edges: [waist, side, hem]}
  strap:  {cut: 2, edges: [front-end, long, back-end, long]}
  tie:    {cut: 2, edges: [end, long, tip, long]}
  loop:   {cut: 1, edges: [end, long, end, long]}
  spare:  {cut: 1, edges: [end, long, tip, long]}
operations:
  straps:  {strap: strap}
  ties:    {strap: tie, method: folded}
  loops:   {strap: loop}
  spares:  {strap: spare}
  bib:     {sew: [bib.top, bib.side], to: facing, between: {strap.front-end: bib.top}}
  sides:   {hem: skirt.side, depth: 2}
  band:    {sew: [band.top, band.end], to: inner, as: enclosed, between: {bib.waist: band.top}}
  waist:   {band: skirt.waist, with: band + inner}
  hem:     {hem: skirt.hem, depth: 2}
  ties-on: {attach: tie.end, at: skirt.side, from: wrong side}
  loop-on: {attach: loop, at: skirt.hem}
  spares-on: {attach: spare, at: skirt.hem}
  holes:   {buttonhole: strap, number: 2}
  more:    {buttonhole: strap, number: 4}
"""


def test_the_ends_of_a_strap_are_known_from_what_takes_them_up():
    assert "Stitch across the back end edges of the strap pieces" in told("straps", APRON)
    assert "First fold the tip edges of the tie pieces" in told("ties/fold", APRON)
    assert "Leave both short ends open" in told("loops", APRON)
    assert "at one end" in told("loops/turn", APRON)
    assert "If one end will hang free" in told("spares", APRON)


def test_a_strap_is_sewn_on_by_one_end_or_by_both_and_on_the_side_that_is_named():
    ties, loop, spare = (told(entry, APRON) for entry in ("ties-on", "loop-on", "spares-on"))
    assert "On the wrong side of the cloth lay the end edges of the tie pieces" in ties
    assert "twisted" not in ties
    assert "On the right side of the cloth lay both ends of the loop piece" in loop
    assert "where a piece is held at both ends" in spare


def test_what_is_caught_over_the_fold_lies_middle_on_middle():
    assert "Let its middle meet the middle of that edge." in told("band", APRON)
    assert "where the pattern shows it" in told("bib", APRON)
    assert "middle" not in told("bib", APRON)


def test_a_band_that_is_sewn_round_its_ends_meets_the_ends_of_the_edge():
    assert "The sewn ends of the band lie level" in told("waist", APRON)


def test_buttonholes_are_told_for_each_copy():
    assert "2 of them, 1 on each piece" in told("holes", APRON)
    assert "4 of them, 2 on each piece" in told("more", APRON)


DRESS = """
garment: Dress
allowance: 1
pieces:
  front:
    cut: fold
    edges: [neck, shoulder, armhole, side, hem]
    slits: {slit: {at: fold | neck, length: 10}}
  back:   {cut: pair, edges: [neck, shoulder, armhole, side, hem, centre | opening]}
  sleeve: {cut: pair, edges: [cap, underarm-back, wrist, underarm-front]}
  cuff:   {cut: 2, strip: [attach, end, fold, end]}
  tape:   {cut: 2, strip: [attach, end, fold, end]}
operations:
  slit:      {slash: front.slit}
  centre:    {sew: back.centre}
  shoulders: {sew: front.shoulder, to: back.shoulder}
  neck:      {bind: [front.neck, back.neck], with: tape}
  sides:     {sew: front.side, to: back.side}
  underarms: {sew: sleeve.underarm-front, to: sleeve.underarm-back}
  cuffs:     {band: sleeve.wrist, with: cuff}
  sleeves:   {sew: sleeve.cap, to: [front.armhole, back.armhole], method: in the round}
"""


def test_each_half_of_an_edge_has_its_binding_and_each_sleeve_its_own_cuff():
    neck = told("neck", DRESS)
    assert "in two halves, each of which is sewn by itself: of the 2 tape pieces" in neck
    assert "reaches beyond the edge by its own allowance" in neck
    assert "two halves" not in told("cuffs", DRESS)


def test_the_smaller_tube_is_slipped_into_the_larger():
    assert "the part of the sleeve pieces right side out and slip it into" in told("sleeves", DRESS)


VEST = """
garment: Vest
allowance: 1
pieces:
  front: {cut: pair, edges: [shoulder, armhole, side, hem, edge]}
  back: {cut: fold, edges: [neck, shoulder, armhole, side, hem]}
  front-lining: {like: front, layer: lining}
  back-lining: {like: back, layer: lining}
operations:
  shoulders: {sew: front.shoulder, to: back.shoulder}
  inside: {sew: front-lining.shoulder, to: back-lining.shoulder}
  edges:
    sew: [front.hem, front.edge, back.neck]
    to: [front-lining.hem, front-lining.edge, back-lining.neck]
  armholes: {sew: [front.armhole, back.armhole], to: [front-lining.armhole, back-lining.armhole]}
  back-hem: {sew: back.hem, to: back-lining.hem, gap: 12}
  turn: {turn: all, through: the shoulders}
  sides: {sew: [front.side, front-lining.side], to: [back.side, back-lining.side]}
"""


def test_a_way_out_that_is_a_seam_is_explained():
    turn = told("turn", VEST)
    assert "between the two layers of the back piece at an open edge" in turn
    assert "through the shoulder seam, take hold of the front pieces" in turn
    plain = told("turn", VEST.replace("the shoulders", "the open neck"))
    assert "through the open neck, push" in plain


def test_the_last_seams_of_a_lining_are_drawn_out_through_the_gap():
    sides = told("sides", VEST)
    assert sides.startswith("Reach in through the gap in the hem seam")
    assert "push it back in through the gap" in sides
    assert "Reach in" not in told("sides", VEST.replace(", gap: 12", ""))


def test_what_is_caught_is_pinned_on_before_the_other_layer_is_laid():
    words = told("top")
    assert words.startswith("Lay the zip face down on the right side along the top edges of the")
    assert words.index("Lay the zip") < words.index("With right sides together, lay the top edges")


def test_both_ends_of_a_doubled_tab_lie_in_the_seam():
    text = POUCH.replace("at: outer.side}", "at: outer.side, doubled: yes}")
    assert told("tab-on", text).startswith("Fold the tab piece in half across")
    assert "in half across" not in told("tab-on")


def test_a_label_that_hangs_inside_is_laid_on_the_wrong_side():
    text = POUCH.replace("at: outer.side}", "at: outer.side, from: wrong side}")
    assert "Lay the tab piece on the wrong side at" in told("tab-on", text)
    assert "on the right side at" in told("tab-on")


def test_a_row_round_corners_says_along_which_edges():
    assert "along the side, foot and side edges in this order" in told("outside")


def test_raw_edges_of_a_corner_are_spoken_of():
    assert "its raw edges stay as they are" in told("corners")


SHIRT = """
garment: Shirt without fronts
allowance: 1
fabrics: {cotton: {kind: woven}, jersey: {kind: knit}}
pieces:
  body:   {of: cotton, cut: fold, edges: [neck, armhole, side, hem]}
  back:   {of: cotton, cut: fold, edges: [neck, armhole, side, hem]}
  sleeve: {of: cotton, cut: pair, edges: [cap, underarm-back, wrist, underarm-front]}
  cuff:   {of: cotton, cut: pair, strip: [attach, end, fold, end]}
  yoke:   {of: cotton, cut: fold, edges: [top, lower]}
  yoke-inner:  {of: cotton, like: yoke, layer: facing}
  fall:        {of: cotton, cut: fold, edges: [outer, neck]}
  fall-under:  {of: cotton, like: fall, layer: facing}
operations:
  sides:   {sew: body.side, to: back.side, as: finished together}
  under:   {sew: sleeve.underarm-front, to: sleeve.underarm-back}
  sleeves: {sew: sleeve.cap, to: [body.armhole, back.armhole], as: finished together,
            topstitch: body, method: in the round}
  fall:    {sew: fall.outer, to: fall-under, as: enclosed}
  yoke:    {sew: yoke.lower, to: yoke-inner.lower, between: fall-under.neck,
            press: away from the fall}
  holes:   {buttonhole: cuff, number: 2}
"""


def test_the_tube_that_goes_inside_is_named():
    words = told("sleeves", SHIRT)
    assert "turn the part of the sleeve pieces right side out" in words
    assert "into the part of the body and back pieces, which is wrong side out" in words


def test_allowances_are_pressed_to_the_side_that_is_topstitched():
    assert "both allowances towards the body" in told("sleeves/press", SHIRT)
    assert "both allowances towards the back" in told("sides/press", SHIRT)


def test_of_two_layers_caught_as_one_it_is_said_which_lies_on_the_outer():
    words = told("yoke", SHIRT)
    assert (
        "Lay the fall and fall under pieces, sewn to one another and turned, on the lower" in words
    )
    assert "the neck edge of the fall under piece on the right side of the cloth" in words


def test_layers_are_folded_away_from_what_they_catch():
    words = told("yoke/press", SHIRT)
    assert "fold the yoke and yoke inner pieces away from the fall, until they lie" in words


def test_buttonholes_are_counted_for_each_piece():
    assert "There are 2 of them, 1 on each piece." in told("holes", SHIRT)
