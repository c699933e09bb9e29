using System.CommandLine;
using System.Text;
using Rostrum.Cli.Arguments;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Pictures;
using Rostrum.Pictures.Positions;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum draw</c>: a position as a picture.</summary>
internal sealed class DrawCommand : PositionCommand
{
    private const double PngScale = 2;

    private readonly Option<string> _output;
    private readonly Option<bool> _dark;

    /// <summary>The command at a desk.</summary>
    public DrawCommand(Desk desk)
        : this(desk, OutputOption.Named("FILE", "Where the picture goes; the ending says what it is: .svg, .png or .pdf."), new Option<bool>("--dark") { Description = "Draw on a dark ground." })
    {
    }

    private DrawCommand(Desk desk, Option<string> output, Option<bool> dark)
        : base(desk, "draw", "Draws a position as a picture, SVG, PNG or PDF.", "rostrum draw games/kiln-night E1 -o E1.svg", "The seat, from 1, whose board comes first.", output, dark)
    {
        _output = output;
        _dark = dark;
    }

    /// <inheritdoc />
    protected override int Answer(PositionRequest request, ParseResult parse)
    {
        string path = parse.GetRequiredValue(_output);
        string ending = Path.GetExtension(path).ToLowerInvariant();
        if (ending is not (".svg" or ".png" or ".pdf"))
        {
            return Desk.Refuse($"'{path}' does not say what to draw: end it in .svg, .png or .pdf.");
        }

        if (request.Position.Sheet.Boards.All(b => b.Spaces.IsEmpty))
        {
            return Desk.Refuse($"{request.Position.Sheet.Game} has no board, so there is nothing to draw.");
        }

        Palette palette = parse.GetValue(_dark) ? Palette.Dark : Palette.Light;
        Scene scene = TablePainter.Paint(PositionPicture.Of(request.Seen, new PictureWish(request.Title, request.File.Says, [])));
        byte[] content = ending switch
        {
            ".svg" => Encoding.UTF8.GetBytes(SvgWriter.Write(scene, SvgOptions.StandAlone(palette))),
            ".pdf" => PdfWriter.Write(scene, palette),
            _ => PngWriter.Write(scene, PngScale, palette),
        };
        AtomicFile.Write(path, content);
        Tell(path, content.Length, scene, request.Json);
        return ExitCode.Fine;
    }

    private void Tell(string path, int bytes, Scene scene, bool json)
    {
        if (json)
        {
            Desk.Write(new DrawReport(ReportJson.Format, path, bytes, scene.Description), r => r.DrawReport);
        }
        else
        {
            Desk.Say($"drew '{path}'");
        }
    }
}
