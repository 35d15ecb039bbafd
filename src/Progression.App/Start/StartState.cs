using System.Collections.Immutable;
using Progression.Core.Forecasts;

namespace Progression.App.Start;

/// <summary>The start screen at one moment: the list of cases. It knows no terminal and no store.</summary>
public sealed record StartState
{
    /// <summary>The store's folder, as it is shown.</summary>
    public required string Folder { get; init; }

    /// <summary>Whether the list is the demo's.</summary>
    public bool IsDemo { get; init; }

    /// <summary>The moment the list was read.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>The present day.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The cases, by code.</summary>
    public required ImmutableArray<CaseLine> Cases { get; init; }

    /// <summary>How often forecasts held in this store; null where it was not read.</summary>
    public HitRate? HitRate { get; init; }

    /// <summary>The case under the cursor, from 0; 0 in an empty list.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public StartMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public StartMode HelpFor { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The case under the cursor; null in an empty list.</summary>
    public CaseLine? Chosen => Cases.IsEmpty ? null : Cases[Math.Clamp(Index, 0, Cases.Length - 1)];

    /// <summary>The state with the cursor on another case; stays at the ends.</summary>
    public StartState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Cases.Length - 1)), Status = "" };
}
