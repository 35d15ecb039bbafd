using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.App.Intake;

/// <summary>The screening before stim at one moment. It knows no terminal and writes nothing; every action gives another state.</summary>
public sealed record ScreeningState
{
    private ScreeningState()
    {
    }

    /// <summary>The case as it is saved.</summary>
    public required Case Case { get; init; }

    /// <summary>The clinical library, whose questions are asked.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The present day.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Whether it is asked on the way to a first plan, where leaving it skips a step.</summary>
    public bool IsStep { get; init; }

    /// <summary>The answers by item; one that is missing was not asked.</summary>
    public required ImmutableSortedDictionary<string, ScreeningAnswer> Answers { get; init; }

    /// <summary>The day on which it was asked.</summary>
    public required DateOnly AskedOn { get; init; }

    /// <summary>The gate of stim with these answers.</summary>
    public required StimGate Gate { get; init; }

    /// <summary>The question under the cursor, from 0.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public ScreeningMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public ScreeningMode HelpFor { get; init; }

    /// <summary>Lines of the part below the questions, or of the help page, that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The small form of <see cref="ScreeningMode.Clearance"/> and <see cref="ScreeningMode.Day"/>; null outside them.</summary>
    public Form? Aside { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The questions, those that bar stim first.</summary>
    public ImmutableArray<ScreeningItem> Items => [.. Library.Screening.OrderBy(item => item.Kind)];

    /// <summary>The question under the cursor; null when the library has none.</summary>
    public ScreeningItem? Chosen => Library.Screening.IsEmpty ? null : Items[Math.Clamp(Index, 0, Library.Screening.Length - 1)];

    /// <summary>The questions that were not asked yet and bear on stim; one asked for the record alone is never answered with the rest.</summary>
    public IEnumerable<ScreeningItem> Rest => Items.Where(item => item.Kind != ScreeningKind.NoConcern && !Answers.ContainsKey(item.Id));

    /// <summary>Whether anything was answered otherwise than it is saved.</summary>
    public bool IsTouched => AskedOn != (Case.Screening.Date ?? Today) || Answers.Count != Case.Screening.Answers.Count || Answers.Values.Any(answer => Case.Screening.Answers.GetValueOrDefault(answer.Item) != answer);

    /// <summary>The case with the answers.</summary>
    public Case Patient => Case with { Screening = new Screening(Answers.IsEmpty ? null : AskedOn, Answers) };

    /// <summary>What was answered otherwise than it is saved, as plain texts, so that it can be kept and put back.</summary>
    public FormTexts Texts => ScreeningTexts.Of(this);

    /// <summary>The screening of a case, at the first question that was not asked.</summary>
    /// <param name="patient">The case as it is saved.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="today">The present day.</param>
    public static ScreeningState Open(Case patient, ClinicalLibrary library, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ScreeningState start = new()
        {
            Case = patient,
            Library = library,
            Today = today,
            Answers = patient.Screening.Answers,
            AskedOn = patient.Screening.Date ?? today,
            Gate = StimGate.Of(patient, library, today),
        };
        return start with { Index = Math.Max(0, start.Items.ToList().FindIndex(item => !start.Answers.ContainsKey(item.Id))) };
    }

    /// <summary>It as it was left, on the case as it is now: what was saved in between stays, but for what was answered here.</summary>
    public ScreeningState On(Case patient) => ScreeningTexts.On(Open(patient, Library, Today) with { IsStep = IsStep, Index = Index }, Texts);

    /// <summary>It with what was kept put in.</summary>
    public ScreeningState With(FormTexts texts) => ScreeningTexts.On(this, texts);

    /// <summary>It with other answers, and the gate that follows from them.</summary>
    public ScreeningState With(ImmutableSortedDictionary<string, ScreeningAnswer> answers)
    {
        ScreeningState answered = this with { Answers = answers, Status = "" };
        return answered with { Gate = StimGate.Of(answered.Patient, Library, Today) };
    }

    /// <summary>It with the cursor on another question; it stays at the ends.</summary>
    public ScreeningState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Library.Screening.Length - 1)), Scroll = 0, Status = "" };
}
