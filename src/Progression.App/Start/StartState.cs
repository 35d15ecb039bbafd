using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Caseload;
using Progression.Core.Forecasts;
using Progression.Core.People;

namespace Progression.App.Start;

/// <summary>The start screen at one moment: the list of cases. It knows no terminal and no store.</summary>
public sealed record StartState
{
    // Whole objects, so that a screen that is drawn while it is worked on never sees half of one.
    private Ordered? _ordered;
    private Narrowed? _shown;

    /// <summary>The store's folder, as it is shown.</summary>
    public required string Folder { get; init; }

    /// <summary>Whether the list is the demo's.</summary>
    public bool IsDemo { get; init; }

    /// <summary>The moment the list was read.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>The present day.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>All cases, in no particular order.</summary>
    public required ImmutableArray<CaseLine> Cases { get; init; }

    /// <summary>Which of them are shown, in which order.</summary>
    public CaseChoice Choice { get; init; } = CaseChoice.Everything;

    /// <summary>What is typed to find; its text is part of <see cref="Choice"/>.</summary>
    public LineEntry Finding { get; init; } = LineEntry.Empty;

    /// <summary>The cases that are shown. Ordered once for an order and narrowed once for a choice, so that a key never waits for it.</summary>
    public ImmutableArray<CaseLine> Shown
    {
        get
        {
            Ordered ordered = _ordered is { } known && known.Of == Cases && known.Order == Choice.Order ? known : new(Cases, Choice.Order, Choice.Ordered(Cases));
            Narrowed shown = _shown is { } seen && seen.Of == ordered.Lines && seen.Choice == Choice ? seen : new(ordered.Lines, Choice, Choice.Of(ordered.Lines));
            (_ordered, _shown) = (ordered, shown);
            return shown.Lines;
        }
    }

    /// <summary>How often forecasts held in this store; null where it was not read.</summary>
    public HitRate? HitRate { get; init; }

    /// <summary>The case under the cursor among those shown, from 0; 0 in an empty list.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public StartMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public StartMode HelpFor { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The case under the cursor; null when none is shown.</summary>
    public CaseLine? Chosen => Shown.IsEmpty ? null : Shown[Math.Clamp(Index, 0, Shown.Length - 1)];

    /// <summary>The state with the cursor on another case; stays at the ends.</summary>
    public StartState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Shown.Length - 1)), Status = "" };

    /// <summary>The state with the cursor on a case; on the nearest place where the case is not shown.</summary>
    public StartState On(CaseCode? code)
    {
        int at = code is null ? -1 : Place(code);
        return this with { Index = Math.Clamp(at < 0 ? Index : at, 0, Math.Max(0, Shown.Length - 1)) };
    }

    private int Place(CaseCode code)
    {
        for (int at = 0; at < Shown.Length; at++)
        {
            if (Shown[at].Code == code)
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>The state with other cases shown or in another order; the cursor stays on its case where that is still shown, else it goes to the first.</summary>
    public StartState With(CaseChoice choice)
    {
        CaseCode? on = Chosen?.Code;
        return (this with { Choice = choice, Index = 0, Status = "" }).On(on);
    }

    private sealed class Ordered(ImmutableArray<CaseLine> of, CaseOrder order, ImmutableArray<CaseLine> lines)
    {
        public ImmutableArray<CaseLine> Of => of;

        public CaseOrder Order => order;

        public ImmutableArray<CaseLine> Lines => lines;
    }

    private sealed class Narrowed(ImmutableArray<CaseLine> of, CaseChoice choice, ImmutableArray<CaseLine> lines)
    {
        public ImmutableArray<CaseLine> Of => of;

        public CaseChoice Choice => choice;

        public ImmutableArray<CaseLine> Lines => lines;
    }
}
