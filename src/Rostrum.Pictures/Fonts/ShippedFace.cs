using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A font file that comes with Rostrum; it is read when it is first needed.</summary>
public sealed class ShippedFace
{
    private readonly Lazy<ImmutableArray<byte>> _bytes;
    private readonly Lazy<FontMetrics> _metrics;

    internal ShippedFace(string name)
    {
        Name = name;
        _bytes = new Lazy<ImmutableArray<byte>>(() => Read(name));
        _metrics = new Lazy<FontMetrics>(() => new FontMetrics(_bytes.Value.AsSpan()));
    }

    /// <summary>Family and weight, such as <c>NotoSans-Bold</c>.</summary>
    public string Name { get; }

    /// <summary>The whole TrueType file.</summary>
    public ImmutableArray<byte> Bytes => _bytes.Value;

    /// <summary>Its advance widths.</summary>
    public FontMetrics Metrics => _metrics.Value;

    private static ImmutableArray<byte> Read(string name)
    {
        using Stream stream = typeof(ShippedFace).Assembly.GetManifestResourceStream($"Fonts/{name}.ttf")
            ?? throw new InvalidOperationException($"The font {name} was not built into this assembly.");
        byte[] bytes = new byte[checked((int)stream.Length)];
        stream.ReadExactly(bytes);
        return ImmutableArray.Create(bytes);
    }
}

/// <summary>A part of a line that one font can draw.</summary>
/// <param name="Face">The font.</param>
/// <param name="Text">Never empty.</param>
public sealed record TextRun(ShippedFace Face, string Text);
