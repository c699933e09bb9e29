namespace Rostrum.Text.Outline;

/// <summary>Makes prose of a stretch of a file: raw, but without the quotes that surround all of it.</summary>
internal static class ProseText
{
    /// <summary>The prose between two offsets, blanks at both ends left out.</summary>
    public static OutlineNode Read(OutlineInput input, int start, int end)
    {
        while (start < end && OutlineInput.IsSpace(input.Content[start]))
        {
            start++;
        }

        while (end > start && OutlineInput.IsSpace(input.Content[end - 1]))
        {
            end--;
        }

        if (start == end)
        {
            return new OutlineEmpty(input.Text.Span(start, 0));
        }

        bool opens = input.Content[start] is '"' or '\'' && input.Content[end - 1] == input.Content[start];
        QuotedText? quoted = opens ? QuotedText.Read(input.Content, start, end) : null;
        SourceSpan span = input.Between(start, end);
        return quoted is { } words && words.End == end
            ? words.ToScalar(input.Text, start, OutlineStyle.Prose)
            : new OutlineScalar(span, span.Text, OutlineStyle.Prose, start);
    }
}
