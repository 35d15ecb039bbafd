using System.Collections.Immutable;
using Progression.App.Actions;

namespace Progression.App.Papers;

/// <summary>What of a case can be printed or taken out, with what was chosen of each.</summary>
public sealed record PapersState
{
    /// <summary>What they are made from; its week and measure are those chosen.</summary>
    public required PaperOrder Order { get; init; }

    /// <summary>The papers.</summary>
    public ImmutableArray<Paper> Papers { get; init; } = PaperShelf.All;

    /// <summary>The measures a paper can be about, by id and title.</summary>
    public required ImmutableArray<(string Id, string Title)> Measures { get; init; }

    /// <summary>The folder files go to; null where the clinic has to set it first.</summary>
    public required string? Folder { get; init; }

    /// <summary>The chosen format of each paper by its name; one that is not here has its usual one.</summary>
    public ImmutableDictionary<string, PaperFormat> Formats { get; init; } = ImmutableDictionary<string, PaperFormat>.Empty;

    /// <summary>The paper under the cursor, from 0.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public PapersMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public PapersMode HelpFor { get; init; }

    /// <summary>The name of the file that is being typed.</summary>
    public LineEntry Name { get; init; } = LineEntry.Empty;

    /// <summary>The paper as text, while it is read.</summary>
    public ImmutableArray<string> Text { get; init; } = [];

    /// <summary>Lines that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told.</summary>
    public string Status { get; init; } = "";

    /// <summary>The paper under the cursor.</summary>
    public Paper Chosen => Papers[Index];

    /// <summary>How it is to be written.</summary>
    public PaperFormat Format => FormatOf(Chosen);

    /// <summary>How a paper is to be written.</summary>
    public PaperFormat FormatOf(Paper paper) => Formats.GetValueOrDefault(paper.Name, paper.Formats[0]);

    /// <summary>The state with the cursor on another paper; stays at the ends.</summary>
    public PapersState To(int index) => this with { Index = Math.Clamp(index, 0, Papers.Length - 1), Status = "" };

    /// <summary>The state with another format for the paper under the cursor; goes round.</summary>
    public PapersState WithFormat(int step) => this with { Formats = Formats.SetItem(Chosen.Name, Around(Chosen.Formats, Format, step)), Status = "" };

    /// <summary>The state for another week; stays within the plan.</summary>
    public PapersState WithWeek(int step) =>
        this with { Order = Order with { Week = Math.Clamp(Order.Week + step, Order.Plan.FirstWeek, Order.Plan.Weeks) }, Status = "" };

    /// <summary>The state for another measure; goes round.</summary>
    public PapersState WithMeasure(int step) =>
        this with { Order = Order with { Measure = Around([.. Measures.Select(one => one.Id)], Order.Measure ?? Measures[0].Id, step) }, Status = "" };

    private static T Around<T>(ImmutableArray<T> all, T now, int step) => all[(all.IndexOf(now) + step + all.Length) % all.Length];
}
