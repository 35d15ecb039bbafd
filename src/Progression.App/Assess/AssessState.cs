using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>The form of an assessment at one moment. It knows no terminal and writes nothing; every action gives another state.</summary>
public sealed record AssessState
{
    private AssessState()
    {
    }

    /// <summary>What the form reads.</summary>
    public required AssessDesk Desk { get; init; }

    /// <summary>The lines.</summary>
    public required Form Form { get; init; }

    /// <summary>What the keys mean.</summary>
    public AssessMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public AssessMode HelpFor { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>How extension deficits are written; null while nobody has been asked.</summary>
    public DeficitSign? Sign { get; init; }

    /// <summary>The visit that is corrected; null for a new one.</summary>
    public Assessment? Standing { get; init; }

    /// <summary>Whether these are the measures before the operation.</summary>
    public bool IsPreOp { get; init; }

    /// <summary>How a reading was taken, where it was typed; elsewhere it is as at the last visit.</summary>
    public ImmutableDictionary<string, ReadingDetail> Details { get; init; } = ImmutableDictionary<string, ReadingDetail>.Empty;

    /// <summary>The small form of <see cref="AssessMode.Detail"/> and <see cref="AssessMode.Reason"/>; null outside them.</summary>
    public Form? Aside { get; init; }

    /// <summary>Who corrects and why; null until asked.</summary>
    public CorrectionReason? Reason { get; init; }

    /// <summary>Whether a question was come to by finishing, and finishing goes on after it.</summary>
    public bool IsFinishing { get; init; }

    /// <summary>What was typed on while the question how a deficit is written stood; it goes into the next line.</summary>
    public string TypedOn { get; init; } = "";

    /// <summary>What is odd and is being asked; null outside <see cref="AssessMode.Query"/>.</summary>
    public EntryQuery? Query { get; init; }

    /// <summary>The odd values that were said to be right, as they were asked.</summary>
    public ImmutableHashSet<EntryQuery> Confirmed { get; init; } = [];

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The case, with the way extension deficits are written.</summary>
    public Case Patient => Desk.Case with { DeficitWritten = Sign };

    /// <summary>Whether anything was typed that is not saved.</summary>
    public bool IsTouched => Form.IsTouched || !Details.IsEmpty;

    /// <summary>The form as it was left, on the case as it is now: what was saved in between stays.</summary>
    public AssessState On(AssessDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        return this with { Desk = desk, Standing = AssessVisits.At(desk.Case, Standing?.Date) };
    }

    /// <summary>The form of a new visit today, or of an earlier one to be corrected.</summary>
    /// <param name="desk">What the form reads.</param>
    /// <param name="visit">The day of the visit to correct; null, or a day on which there was none, for a new one.</param>
    public static AssessState Open(AssessDesk desk, DateOnly? visit = null)
    {
        ArgumentNullException.ThrowIfNull(desk);
        DeficitSign? sign = desk.Case.DeficitWritten;
        AssessState blank = new() { Desk = desk, Sign = sign, Form = AssessLines.Labelled(Form.Of(AssessLines.Of(desk.Library)), sign) };
        return AssessVisits.At(desk.Case, visit) is { } standing ? AssessVisits.Correct(blank, standing) : AssessVisits.Begin(blank, visit ?? desk.Today);
    }
}
