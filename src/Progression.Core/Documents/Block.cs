using System.Collections.Immutable;

namespace Progression.Core.Documents;

/// <summary>A part of a document.</summary>
public abstract record Block
{
    private Block()
    {
    }

    /// <summary>A heading.</summary>
    /// <param name="Level">2 for a section, 3 for a part of one; the title is the only 1.</param>
    /// <param name="Text">The heading.</param>
    public sealed record Heading(int Level, string Text) : Block;

    /// <summary>Running text.</summary>
    public sealed record Paragraph(string Text) : Block;

    /// <summary>Things to be done one after another, or points without an order.</summary>
    /// <param name="Items">The points.</param>
    /// <param name="InOrder">Whether they are numbered.</param>
    public sealed record Points(ImmutableArray<string> Items, bool InOrder) : Block;

    /// <summary>A box to tick for each time something is to be done.</summary>
    /// <param name="Days">The days, as they are shown.</param>
    /// <param name="Times">How often on each day; 0 on a day on which it is not done.</param>
    public sealed record Ticks(ImmutableArray<string> Days, ImmutableArray<int> Times) : Block;

    /// <summary>Something that must not be overlooked, set apart from the rest.</summary>
    /// <param name="Title">When it holds.</param>
    /// <param name="Items">What it says.</param>
    public sealed record Notice(string Title, ImmutableArray<string> Items) : Block;

    /// <summary>Room to write by hand.</summary>
    /// <param name="Count">Empty lines.</param>
    public sealed record Lines(int Count) : Block;

    /// <summary>Figures by rows and columns.</summary>
    /// <param name="Head">The names of the columns.</param>
    /// <param name="Rows">The rows, each with as many cells as there are columns.</param>
    public sealed record Table(ImmutableArray<string> Head, ImmutableArray<ImmutableArray<string>> Rows) : Block;

    /// <summary>A drawing.</summary>
    /// <param name="Drawing">What is drawn.</param>
    /// <param name="Words">What it shows, where it cannot be seen: a sentence.</param>
    public sealed record Picture(Drawing Drawing, string Words) : Block;
}
