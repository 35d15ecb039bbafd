using System.Collections.Immutable;
using Progression.Core.Outcomes;

namespace Progression.App.Figures;

/// <summary>The clinic's figures as a screen. It knows no store: what each case adds was taken from it before.</summary>
public sealed record FiguresState
{
    /// <summary>What each case adds.</summary>
    public required ImmutableArray<CaseOutcome> Cases { get; init; }

    /// <summary>What they were judged by.</summary>
    public required OutcomeYardstick By { get; init; }

    /// <summary>The figures with the groups chosen.</summary>
    public required ClinicSummary Summary { get; init; }

    /// <summary>The groups told beside all cases.</summary>
    public FiguresGroups Groups { get; init; }

    /// <summary>The goal whose curve would be written, from 0.</summary>
    public int Goal { get; init; }

    /// <summary>What the keys mean.</summary>
    public FiguresMode Mode { get; init; }

    /// <summary>Lines that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told.</summary>
    public string Status { get; init; } = "";

    /// <summary>The screen at its start.</summary>
    /// <param name="cases">What each case adds.</param>
    /// <param name="by">What they were judged by.</param>
    /// <param name="status">What is told at first.</param>
    public static FiguresState Open(ImmutableArray<CaseOutcome> cases, OutcomeYardstick by, string status) =>
        new() { Cases = cases, By = by, Summary = ClinicSummary.Of(cases, by, null), Status = status };

    /// <summary>The goal whose curve would be written.</summary>
    public OutcomeGoal Chosen => Summary.Goals[Goal];

    /// <summary>Its figures over all cases; null where they are withheld.</summary>
    public WaitFigures? ChosenFigures => Summary.Groups[0].Waits[Goal];

    /// <summary>The state with the next groups; goes round.</summary>
    public FiguresState WithGroups()
    {
        FiguresGroups next = (FiguresGroups)(((int)Groups + 1) % Enum.GetValues<FiguresGroups>().Length);
        string told = next == FiguresGroups.None ? "All cases only." : $"Groups by {next.ToString().ToLowerInvariant()} stand below all cases.";
        return this with { Groups = next, Summary = ClinicSummary.Of(Cases, By, next.Of()), Scroll = 0, Status = told };
    }

    /// <summary>The state with another goal to draw; goes round.</summary>
    public FiguresState WithGoal(int step)
    {
        FiguresState next = this with { Goal = (Goal + step + Summary.Goals.Length) % Summary.Goals.Length };
        return next with { Status = $"To draw: {next.Chosen.Title}." };
    }
}
