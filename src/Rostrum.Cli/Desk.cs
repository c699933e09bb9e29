using System.Text.Json.Serialization.Metadata;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Text;

namespace Rostrum.Cli;

/// <summary>What surrounds a command: where it reads, where its data and its talk go, and whether it shall stop.</summary>
/// <param name="input">Standard input.</param>
/// <param name="output">Receives data; flushed before every word of talk, so that a terminal shows both in order.</param>
/// <param name="talk">Receives talk.</param>
/// <param name="json">True where the user wants answers in JSON, so that a refusal is one as well.</param>
/// <param name="isTerminal">True where somebody sits at standard input and types.</param>
/// <param name="stop">Cancelled by Ctrl-C.</param>
internal sealed class Desk(TextReader input, TextWriter output, TextWriter talk, bool json, bool isTerminal, CancellationToken stop)
{
    /// <summary>Standard input.</summary>
    public TextReader Input => input;

    /// <summary>True where somebody sits at standard input and types, so that he can be asked.</summary>
    public bool IsTerminal => isTerminal;

    /// <summary>Where data goes.</summary>
    public TextWriter Output => output;

    /// <summary>Where talk goes.</summary>
    public TextWriter Talk => talk;

    /// <summary>Cancelled by Ctrl-C.</summary>
    public CancellationToken Stop => stop;

    /// <summary>Writes data.</summary>
    /// <exception cref="UnwritableOutputException">The output cannot take it, such as on a full disk.</exception>
    public void Write(string text) => Guard(() => output.Write(text));

    /// <summary>Writes a report as JSON, with a line end behind it.</summary>
    /// <exception cref="UnwritableOutputException">The output cannot take it.</exception>
    public void Write<T>(T report, Func<ReportJson, JsonTypeInfo<T>> type) => Write(ReportJson.Text(report, type) + "\n");

    /// <summary>Says a sentence to the user in the name of the program.</summary>
    public void Say(string sentence) => Tell($"rostrum: {sentence}");

    /// <summary>Tells a line that sums up what was written as data.</summary>
    public void Tell(string line) => Show(DisplayText.Of(line) + "\n");

    /// <summary>Asks somebody who sits at the terminal; his answer follows on the same line.</summary>
    public void Ask(string question) => Show(question);

    /// <summary>Shows talk that is laid out already.</summary>
    public void Show(string text)
    {
        Flush();
        talk.Write(text);
        talk.Flush();
    }

    /// <summary>Says complaints; where JSON is wanted, they are the answer as well.</summary>
    /// <returns><see cref="ExitCode.WrongUsage"/>.</returns>
    public int Refuse(params IReadOnlyList<string> complaints)
    {
        if (json)
        {
            Write(new RefusalReport(ReportJson.Format, string.Join(' ', complaints)), r => r.RefusalReport);
        }

        foreach (string complaint in complaints)
        {
            Say(complaint);
        }

        return ExitCode.WrongUsage;
    }

    /// <summary>Sends everything on its way.</summary>
    /// <exception cref="UnwritableOutputException">The output cannot take it.</exception>
    public void Flush() => Guard(output.Flush);

    private static void Guard(Action write)
    {
        try
        {
            write();
        }
        catch (IOException problem)
        {
            throw new UnwritableOutputException($"The answer cannot be written to the output: {DiskTrouble.Of(problem)}", problem);
        }
    }
}

/// <summary>The machine does not take what was to be written.</summary>
internal sealed class UnwritableOutputException(string message, Exception inner) : IOException(message, inner);
