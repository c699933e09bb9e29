using Rostrum.Play.Formulas.Nodes;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Where drawings lie on boards.</content>
internal sealed partial class FormulaCompiler
{
    private readonly FitTable _fits = new(layout);
    private AlikeThings? _alikeThings;

    private Node Fits(Term.Apply apply, FrameMap frame)
    {
        (bool, bool) poses = (apply.Arguments[2] is Term.Truth { IsYes: true }, apply.Arguments[3] is Term.Truth { IsYes: true });
        LookTest? with = (apply.Arguments[4] as Term.LookOf)?.Look is { } look ? LookTestOf(look, Sort.Thing) : null;
        bool isPiece = apply.Argument(0).Sort.Kind == SortKind.Thing;
        Node drawing = isPiece ? new ClassNode(At(apply, 0, frame), [.. layout.Classes.Select(c => c.Kind.Shape is { } shape ? _fits.Number(shape.Drawing) : Node.Nothing)]) : At(apply, 0, frame);
        Dictionary<int, DrawingTest> tests = [];
        foreach (int number in drawing is Constant constant ? [constant.Amount] : Enumerable.Range(0, _fits.Drawings.Count).ToArray())
        {
            tests[number] = TestOf(_fits.Drawings[number], with);
        }

        return new FitsNode(drawing, At(apply, 1, frame), isPiece ? PosesOfPiece : _ => poses, _fits, number => tests.TryGetValue(number, out DrawingTest? test) ? test : TestOf(_fits.Drawings[number], with));
    }

    // How a piece may be laid stands with its shape.
    private (bool, bool) PosesOfPiece(int drawing) =>
        Sheet.Kinds.First(k => ReferenceEquals(k.Shape?.Drawing, _fits.Drawings[drawing])).Shape is { } shape ? (shape.Rotated, shape.Mirrored) : default;

    private DrawingTest TestOf(Drawing drawing, LookTest? with) => new(
        [.. drawing.Cells.Select(c => TestOf(c, with))],
        [.. Enumerable.Range(0, drawing.Cells.Length).Where(i => drawing.Cells[i].Alike is not null).GroupBy(i => drawing.Cells[i].Alike).Select(g => g.ToArray()).Where(g => g.Length > 1)],
        _alikeThings ??= FindAlike());

    private CellTest TestOf(DrawingCell cell, LookTest? with)
    {
        if (cell.IsEmpty)
        {
            return new CellTest(true, 0, 0, null);
        }

        bool isSeen = cell.Asks is not null || cell.Alike is not null || cell.Height > 0;
        LookTest[] tops = [.. cell.Asks is { } asks ? [LookTestOf(asks, Sort.Thing)] : Array.Empty<LookTest>(), .. isSeen && with is not null ? [with] : Array.Empty<LookTest>()];
        LookTest? top = tops.Length switch
        {
            0 => null,
            1 => tops[0],
            _ => new AllLooks(tops),
        };
        return new CellTest(false, cell.Height ?? 0, cell.Height is { } height && !cell.OrMore ? height : int.MaxValue, top);
    }

    private AlikeThings FindAlike()
    {
        var keys = new Dictionary<string, int>();
        int[] groups = [.. layout.Classes.Select(c =>
        {
            int[] kept = [.. c.Kind.Attributes.Where(a => !a.Attribute.IsState && StateIndex(c, a.Attribute.Index) < 0).Select(a => c.Values[a.Attribute.Index])];
            string key = $"{Sheet.Kinds.IndexOf(c.Kind)} {c.Card?.Index ?? -1} {string.Join(' ', kept)}";
            return kept.Contains(-1) ? -1 : keys.TryGetValue(key, out int known) ? known : keys[key] = keys.Count;
        })];
        int[][] faces = [.. layout.Classes.Select(c => c.Kind.Attributes.Where(a => !a.Attribute.IsState).Select(a => StateIndex(c, a.Attribute.Index)).Where(s => s >= 0).ToArray())];
        return new AlikeThings(groups, faces);
    }
}
