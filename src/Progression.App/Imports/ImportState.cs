using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.People;
using Progression.Exchange.Import;

namespace Progression.App.Imports;

/// <summary>A file of another program on its way into a case.</summary>
public sealed record ImportState
{
    /// <summary>The case.</summary>
    public required Case Patient { get; init; }

    /// <summary>The folder that a name without one is looked for in.</summary>
    public required string Folder { get; init; }

    /// <summary>The name of the file that is being typed.</summary>
    public LineEntry Name { get; init; } = LineEntry.Empty;

    /// <summary>What the file is said to hold.</summary>
    public ImportKind Kind { get; init; }

    /// <summary>What it comes to; null before it was read.</summary>
    public ImportResult? Result { get; init; }

    /// <summary>The same as it is shown.</summary>
    public ImmutableArray<string> Preview { get; init; } = [];

    /// <summary>Whether it was said that what was asked back is right.</summary>
    public bool IsConfirmed { get; init; }

    /// <summary>What the keys mean.</summary>
    public ImportMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public ImportMode HelpFor { get; init; }

    /// <summary>Lines that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told.</summary>
    public string Status { get; init; } = "";

    /// <summary>The state with another kind of file; goes round.</summary>
    public ImportState WithKind(int step)
    {
        ImportKind[] all = Enum.GetValues<ImportKind>();
        return this with { Kind = all[(Array.IndexOf(all, Kind) + step + all.Length) % all.Length], Status = "" };
    }
}
