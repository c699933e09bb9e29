using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Lessons.Scripts;

/// <summary>A lesson as its presenter wrote it: what is said, topic by topic, with the statements that can be checked and the shots.</summary>
/// <param name="Source">The Markdown file.</param>
/// <param name="Title">From the front matter, else the first heading, else the name of the file.</param>
/// <param name="Presenter">From the front matter; empty where it is not given.</param>
/// <param name="CorrectAsOf">From the front matter, as written; empty where it is not given.</param>
/// <param name="Printing">From the front matter; empty where it is not given.</param>
/// <param name="Topics">One for each level 2 heading, in order.</param>
public sealed record Lesson(SourceText Source, string Title, string Presenter, string CorrectAsOf, string Printing, ImmutableArray<LessonTopic> Topics)
{
    /// <summary>How many words the presenter speaks a minute: <c>pace</c> of the front matter, else <see cref="Pace.Usual"/>.</summary>
    public int WordsAMinute { get; init; } = Pace.Usual;

    /// <summary>Whether the copy was a gift or the lesson is paid for, in the presenter's words: <c>disclosure</c> of the front matter; empty where it is not given.</summary>
    public string Disclosure { get; init; } = "";

    /// <summary>Every statement that can be checked, in the order of the file.</summary>
    public IEnumerable<LessonRun.Claim> Claims => Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Runs).OfType<LessonRun.Claim>();

    /// <summary>Every spoken mark, in the order of the file.</summary>
    public IEnumerable<LessonRun.Marked> Marks => Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Runs).OfType<LessonRun.Marked>();

    /// <summary>Every shot, in the order of the file.</summary>
    public IEnumerable<LessonBlock.Shot> Shots => Topics.SelectMany(t => t.Blocks).OfType<LessonBlock.Shot>();
}

/// <summary>A topic of a lesson.</summary>
/// <param name="Title">The heading.</param>
/// <param name="At">Where the heading stands.</param>
/// <param name="Blocks">What is said and shown, from top to bottom.</param>
public sealed record LessonTopic(string Title, SourceSpan At, ImmutableArray<LessonBlock> Blocks)
{
    /// <summary>How many words are spoken: headings, captions and codes left out.</summary>
    public int Words => Blocks.Sum(b => b.SpokenWords);
}

/// <summary>A piece of a topic.</summary>
public abstract record LessonBlock
{
    private LessonBlock()
    {
    }

    /// <summary>What is spoken in one breath: a paragraph, each item of a list, a quote; empty for a shot or a heading.</summary>
    public virtual IEnumerable<ImmutableArray<LessonRun>> Passages => [];

    /// <summary>What is spoken in it, one run behind the other.</summary>
    public IEnumerable<LessonRun> Runs => Passages.SelectMany(p => p);

    /// <summary>How many words are spoken in it.</summary>
    public int SpokenWords => Passages.Sum(WordsIn);

    /// <summary>How many words are spoken in one breath; a stop behind a link belongs to the word in it.</summary>
    internal static int WordsIn(ImmutableArray<LessonRun> passage) => Prose.WordsOf(string.Concat(passage.Where(r => r is not LessonRun.Code).Select(r => r.Words))).Count(w => w.Any(char.IsLetterOrDigit));

    /// <summary>A paragraph.</summary>
    public sealed record Paragraph(ImmutableArray<LessonRun> Said) : LessonBlock
    {
        /// <inheritdoc />
        public override IEnumerable<ImmutableArray<LessonRun>> Passages => [Said];
    }

    /// <summary>A heading inside a topic.</summary>
    public sealed record Subheading(string Words) : LessonBlock;

    /// <summary>A list.</summary>
    /// <param name="IsNumbered">True where the order matters.</param>
    /// <param name="Items">The words of each item.</param>
    public sealed record List(bool IsNumbered, ImmutableArray<ImmutableArray<LessonRun>> Items) : LessonBlock
    {
        /// <inheritdoc />
        public override IEnumerable<ImmutableArray<LessonRun>> Passages => Items;
    }

    /// <summary>Words of somebody else.</summary>
    public sealed record Quote(ImmutableArray<LessonRun> Said) : LessonBlock
    {
        /// <inheritdoc />
        public override IEnumerable<ImmutableArray<LessonRun>> Passages => [Said];
    }

    /// <summary>A note that nobody hears and that says something about the script: <c>&lt;!-- teaches: jugs --&gt;</c>.</summary>
    /// <param name="Kind">What it says.</param>
    /// <param name="Names">Of which clauses or terms.</param>
    /// <param name="At">Where it stands.</param>
    public sealed record Note(MarkKind Kind, ImmutableArray<string> Names, SourceSpan At) : LessonBlock;

    /// <summary>A shot: what the camera sees.</summary>
    /// <param name="Caption">What it shows, in a few words.</param>
    /// <param name="Target">As written, such as <c>position:E1 show bowls</c>.</param>
    /// <param name="At">Where the target stands.</param>
    public sealed record Shot(string Caption, string Target, SourceSpan At) : LessonBlock;
}

/// <summary>A stretch of words inside a block.</summary>
/// <param name="Words">As spoken.</param>
public abstract record LessonRun(string Words)
{
    /// <summary>How many words they are; none for words read letter by letter, and a stop alone is none.</summary>
    public int Count => this is Code ? 0 : Prose.WordsOf(Words).Count(w => w.Any(char.IsLetterOrDigit));

    /// <summary>Where the spoken words stand; null for words to be read letter by letter.</summary>
    public SourceSpan? Place => this switch
    {
        Plain plain => plain.At,
        Stressed stressed => stressed.At,
        Link link => link.At,
        Unchecked without => without.At,
        Marked marked => marked.At,
        Claim claim => claim.At,
        _ => null,
    };

    /// <summary>Plain words.</summary>
    /// <param name="Words">As spoken.</param>
    /// <param name="At">Where they stand.</param>
    public sealed record Plain(string Words, SourceSpan At) : LessonRun(Words);

    /// <summary>Words that the voice leans on.</summary>
    /// <param name="Words">As spoken.</param>
    /// <param name="IsStrong">True for words that must not be missed.</param>
    /// <param name="At">Where they stand.</param>
    public sealed record Stressed(string Words, bool IsStrong, SourceSpan At) : LessonRun(Words);

    /// <summary>Words to be read letter by letter.</summary>
    public sealed record Code(string Words) : LessonRun(Words);

    /// <summary>Words that lead elsewhere.</summary>
    /// <param name="Words">As spoken.</param>
    /// <param name="Target">The address.</param>
    /// <param name="At">Where the words stand.</param>
    public sealed record Link(string Words, string Target, SourceSpan At) : LessonRun(Words);

    /// <summary>Words of which the presenter says that they need no check: <c>[seven](unchecked)</c>.</summary>
    /// <param name="Words">As spoken.</param>
    /// <param name="At">Where they stand.</param>
    public sealed record Unchecked(string Words, SourceSpan At) : LessonRun(Words)
    {
        /// <summary>The target that says so; a reason may follow behind a colon.</summary>
        public const string Target = "unchecked";
    }

    /// <summary>Words that say something about the script itself: <c>[I come to both later](later:burning)</c>.</summary>
    /// <param name="Words">As spoken.</param>
    /// <param name="Kind">What they say.</param>
    /// <param name="Names">Of which clauses, topics or terms.</param>
    /// <param name="At">Where the spoken words stand; the whole link where there are none.</param>
    /// <param name="TargetAt">Where the target stands.</param>
    public sealed record Marked(string Words, MarkKind Kind, ImmutableArray<string> Names, SourceSpan At, SourceSpan TargetAt) : LessonRun(Words)
    {
        /// <summary>The target as written, for messages; a blank outside of <c>&lt;</c> and <c>&gt;</c> makes it no link.</summary>
        internal bool HoldsBlank { get; init; }
    }

    /// <summary>A statement that can be held against the sheet.</summary>
    /// <param name="Words">As spoken.</param>
    /// <param name="Target">What it must equal, such as <c>tally:E1/total</c>.</param>
    /// <param name="At">Where the spoken words stand.</param>
    /// <param name="TargetAt">Where the target stands.</param>
    public sealed record Claim(string Words, string Target, SourceSpan At, SourceSpan TargetAt) : LessonRun(Words);
}
