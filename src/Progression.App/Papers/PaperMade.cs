using System.Collections.Immutable;
using System.Text;

namespace Progression.App.Papers;

/// <summary>What was made: the bytes of a file.</summary>
public sealed record PaperMade
{
    private PaperMade(ImmutableArray<byte> bytes, string? text) => (Bytes, Text) = (bytes, text);

    /// <summary>The file.</summary>
    public ImmutableArray<byte> Bytes { get; }

    /// <summary>The same as text; null for what only a program can read.</summary>
    public string? Text { get; }

    /// <summary>Why it could not be made, in a sentence with what to do instead; null where it was.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>A text, written as UTF-8.</summary>
    public static PaperMade Of(string text) => new([.. Encoding.UTF8.GetBytes(text)], text);

    /// <summary>Bytes that are no text.</summary>
    public static PaperMade Of(byte[] bytes) => new([.. bytes], null);

    /// <summary>Nothing, because it cannot be made.</summary>
    public static PaperMade Not(string why) => new([], null) { WhyNot = why };
}
