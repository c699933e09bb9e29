"""Makes src/Rostrum.Pictures/Fonts/RostrumLetters-*.ttf: Atkinson Hyperlegible with a zero without a stroke.

Atkinson Hyperlegible 1.006, copyright 2020 Braille Institute of America, Inc., SIL Open Font License 1.1, which allows
changed versions under another name. Only the two zeros and the names of the font are changed; widths stay.
Needs fonttools. Call: plain-zero.py AtkinsonHyperlegible-Regular.ttf RostrumLetters-Regular.ttf
"""
import sys

from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont


def plain(font, name):
    """The glyph with the two halves of its hole joined to one."""
    glyph = font["glyf"][name]
    points, ends, flags = (list(part) for part in glyph.getCoordinates(font["glyf"]))
    outer = list(zip(points[: ends[0] + 1], flags[: ends[0] + 1]))
    hole = points[ends[0] + 1 :]
    left, right = min(x for x, _ in hole), max(x for x, _ in hole)
    low, high = min(y for _, y in hole), max(y for _, y in hole)
    # The lower left quarter of the hole is whole in both weights; the others mirror it.
    middle, centre = (left + right) / 2, (low + high) / 2
    # Its two handles are those off the curve, left of the middle and below the centre.
    foot, side = sorted({p for p, on in zip(hole, flags[ends[0] + 1 :]) if not on and p[0] < middle - 20 and p[1] < centre - 20}, key=lambda p: p[1])[:2]
    mirror = lambda p, x, y: (round(2 * middle - p[0]) if x else p[0], round(2 * centre - p[1]) if y else p[1])
    pen = TTGlyphPen(None)
    contour(pen, outer)
    contour(pen, [
        ((round(middle), low), 1), (mirror(foot, True, False), 0), (mirror(side, True, False), 0), ((right, round(centre)), 1),
        (mirror(side, True, True), 0), (mirror(foot, True, True), 0), ((round(middle), high), 1), (mirror(foot, False, True), 0),
        (mirror(side, False, True), 0), ((left, round(centre)), 1), (side, 0), (foot, 0),
    ])
    return pen.glyph()


def contour(pen, points):
    """Writes a quadratic contour that begins on the curve."""
    pen.moveTo(points[0][0])
    waiting = []
    for point, on in points[1:] + points[:1]:
        waiting.append(point)
        if on:
            pen.qCurveTo(*waiting) if len(waiting) > 1 else pen.lineTo(point)
            waiting = []
    pen.closePath()


font = TTFont(sys.argv[1])
for zero in ("zero", "zero.tf"):
    font["glyf"][zero] = plain(font, zero)
for record in font["name"].names:
    words = record.toUnicode()
    if record.nameID in (1, 3, 4, 6, 16):
        record.string = words.replace("Atkinson Hyperlegible", "Rostrum Letters").replace("AtkinsonHyperlegible", "RostrumLetters")
    if record.nameID == 0:
        record.string = words + " Changed for Rostrum: the zero has no stroke."
font["head"].modified = font["head"].created
font.recalcTimestamp = False
font.save(sys.argv[2])
