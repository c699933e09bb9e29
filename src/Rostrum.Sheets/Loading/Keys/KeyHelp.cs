using System.Collections.Immutable;

namespace Rostrum.Sheets.Loading.Keys;

/// <summary>What a key is for, and what may stand behind it, as an editor tells somebody who writes.</summary>
/// <param name="Key">The key; one that ends in <c>…</c> is the beginning of a key, such as <c>count of each …</c>.</param>
/// <param name="Says">One line for the author.</param>
/// <param name="Form">What may stand behind it.</param>
public sealed record KeyHelp(string Key, string Says, KeyForm Form)
{
    private const char More = '…';

    /// <summary>Words that an editor offers; with <see cref="KeyForm.OneOf"/>, there are no others but <see cref="AlsoRight"/>.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>Words that may stand there and are not offered.</summary>
    public ImmutableArray<string> AlsoRight { get; init; } = [];

    /// <summary>True for a key of which only the beginning is fixed.</summary>
    public bool IsBeginning => Key.EndsWith(More);

    /// <summary>The fixed part of the key.</summary>
    public string Fixed => Key.TrimEnd(More);
}

/// <summary>What may stand behind a key. No form refuses anything that the reader takes; what the reader looks at more closely is left to it.</summary>
public enum KeyForm
{
    /// <summary>Anything at all; also what is not looked at yet.</summary>
    Anything,

    /// <summary>Prose, in which any sign is only text: whatever else YAML makes of it.</summary>
    Prose,

    /// <summary>A text on its line or below; everything that YAML takes for a number or a truth is one too.</summary>
    Text,

    /// <summary>A whole number, in digits or as a word to twelve.</summary>
    Number,

    /// <summary>A text or a list of texts.</summary>
    Texts,

    /// <summary>One of some words.</summary>
    OneOf,

    /// <summary>One of some words, alone or as the only one of a list.</summary>
    OneOfInList,

    /// <summary>A formula, or keys that fork it or name an idiom.</summary>
    Formula,

    /// <summary>A formula or a list of them.</summary>
    Formulas,

    /// <summary>Steps: a line, a list, or heads with steps below them.</summary>
    Steps,

    /// <summary>The author's names, each with anything behind it.</summary>
    Names,

    /// <summary>The author's names, each with a text.</summary>
    NamesOfText,

    /// <summary>The author's names, each with a text or a list of texts.</summary>
    NamesOfTexts,

    /// <summary>The author's names, each with a number.</summary>
    NamesOfNumbers,

    /// <summary>The author's names, each with a number, or one number for all.</summary>
    NumberOrNames,

    /// <summary>The author's names, each with a text, or one text for all.</summary>
    TextOrNames,

    /// <summary>The author's names, each with the keys of the section.</summary>
    Entries,

    /// <summary>The keys of the section themselves.</summary>
    Keys,

    /// <summary>The author's names, each with parts of a sheet.</summary>
    Variants,
}
