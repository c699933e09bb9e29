using CsCheck;
using Rostrum.Testing;
using Rostrum.Sheets.Drawings;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Tests.Drawings;

/// <summary>Drawings: rows, cells, columns and half steps; what a cell means is not asked here.</summary>
public sealed class DrawingTests
{
    private static readonly OutlineDialect Dialect = new([], []);

    public static TheoryData<string, string, string> Cases => new()
    {
        { "squares", "2 . . ba\n1 p pa #\n/ A B C", "2+0: .@0 .@1 ba@2; 1+0: p@0 pa@1 #@2; / A@0 B@1 C@2" },
        { "squares that leave out columns", "2   .\n1 . . .\n/ a b c", "2+0: .@1; 1+0: .@0 .@1 .@2; / a@0 b@1 c@2" },
        { "cells wider than their labels", "2 ja! . l\n1 . . 2+\n/ a b c", "2+0: ja!@0 .@1 l@2; 1+0: .@0 .@1 2+@2; / a@0 b@1 c@2" },
        { "squares without row labels", "| . .\n| . #\n/ a b", "|+0: .@0 .@1; |+0: .@0 #@1; / a@0 b@1" },
        { "hexes", "a   . . .\nb  . # .\nc . .", "a+2: .@0 .@1 .@2; b+1: .@0 #@1 .@2; c+0: .@0 .@1" },
        { "hexes with wide cells", "a   ja  . \nb j   [l]", "a+1: ja@0 .@1; b+0: j@0 [l]@1" },
        { "a row with nothing in it", "a . .\nb\nc . .", "a+0: .@0 .@1; b+0: ; c+0: .@0 .@1" },
        { "blank lines", "\na . .\n\nb . .\n", "a+0: .@0 .@1; b+0: .@0 .@1" },
        { "windows line ends", "a . .\r\n/ x y\r\n", "a+0: .@0 .@1; / x@0 y@1" },
        { "on one line", "j . / p b", "|+0: j@0 .@1; |+0: p@0 b@1" },
        { "on one line with half steps", "~ j . / p b / ~~ x", "|+1: j@0 .@1; |+0: p@0 b@1; |+2: x@0" },
        { "half steps before every row", "~ j / ~~ p", "|+0: j@0; |+1: p@0" },
        { "one cell", ".", "|+0: .@0" },
        { "unknown signs are kept", "2 ?x @ é\n/ a b c", "2+0: ?x@0 @@1 é@2; / a@0 b@1 c@2" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Drawing_is_cut_into_rows_and_cells(string name, string content, string told)
    {
        Drawn drawn = Drawn.Of(content);

        Assert.Equal((name, told), (name, drawn.Told));
        Assert.Empty(drawn.Problems);
    }

    [Theory]
    [InlineData("board: |\n  2 . .\n  1 . #\n  / a b\n", "2+0: .@0 .@1; 1+0: .@0 #@1; / a@0 b@1")]
    [InlineData("board: |\n  a . .\n", "a+0: .@0 .@1")]
    [InlineData("board: j . / p b", "|+0: j@0 .@1; |+0: p@0 b@1")]
    [InlineData("board: \"j . / p b\"", "|+0: j@0 .@1; |+0: p@0 b@1")]
    [InlineData("board:\n  a . .\n  b  . .\n", "a+0: .@0 .@1; b+1: .@0 .@1")]
    public void Drawing_in_a_sheet_is_read_by_how_it_is_written(string sheet, string told)
    {
        DrawingText drawing = DrawingText.Read(FieldOf(sheet), new DiagnosticBag());

        Assert.Equal(told, Drawn.Tell(drawing));
    }

    [Fact]
    public void Every_cell_label_and_ruler_word_has_its_place_in_the_sheet()
    {
        DrawingText drawing = DrawingText.Read(FieldOf("board: |\n  2 . ba\n  1 p #\n  / A B\n"), new DiagnosticBag());

        IEnumerable<string> places = drawing.Rows.SelectMany(r => r.Cells).Concat(drawing.ColumnLabels).Select(c => $"{c.Span.StartPosition} {c.Span.Text}");

        Assert.Equal(["2,5 .", "2,7 ba", "3,5 p", "3,7 #", "4,5 A", "4,7 B"], places);
        Assert.Equal(["2,3 2", "3,3 1"], drawing.Rows.Select(r => $"{r.LabelSpan.StartPosition} {r.LabelSpan.Text}"));
    }

    [Fact]
    public void Drawing_of_labels_alone_has_no_rows()
    {
        var problems = new DiagnosticBag();

        DrawingText drawing = DrawingText.Read(FieldOf("board: |\n  / a b\n"), problems);

        Assert.Empty(drawing.Rows);
        Assert.Equal(["ROS0172"], problems.InOrder().Select(p => p.Id));
    }

    [Fact]
    public void Several_slips_are_all_told()
    {
        Drawn drawn = Drawn.Of("/ a b\n2 . . .\n . .\n1 . .\n/ a b");

        Assert.Equal(["ROS0173 1,1", "ROS0170 2,1", "ROS0171 3,2"], drawn.Problems.Select(p => $"{p.Id} {p.At.StartPosition}"));
    }

    [Fact]
    public void Drawing_of_random_cells_is_read_back() =>
        Gen.Select(Gen.OneOf(".", "#", "-", "_", "ja!", "?x", "[l]", "2+").Array[1, 6].Array[1, 5], Gen.Bool).Hold((rows, ruled) =>
        {
            int columns = rows[0].Length;
            string[][] cells = ruled ? [.. rows.Select(r => r.Concat(Enumerable.Repeat(".", 6)).Take(columns).ToArray())] : rows;
            string content = string.Concat(cells.Select((r, i) => $"r{i} {string.Join(' ', r)}\n")) + (ruled ? $"/ {string.Join(' ', Enumerable.Range(0, columns))}" : "r9 .\n");

            Drawn drawn = Drawn.Of(content);

            Assert.Empty(drawn.Problems);
            Assert.Equal(cells.Select(r => string.Join(' ', r)), drawn.Drawing.Rows.Take(cells.Length).Select(r => string.Join(' ', r.Cells.Select(c => c.Text))));
        });

    private static OutlineScalar FieldOf(string sheet) =>
        (OutlineScalar)OutlineReader.Read(new SourceText("sheet.yaml", sheet), Dialect, new DiagnosticBag()).Find("board")!.Value;
}
