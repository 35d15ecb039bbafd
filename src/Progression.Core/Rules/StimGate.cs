using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>
/// Whether stim may be planned at all, and with what caps. A contraindication that is present, unanswered or unknown bars stim, unless it may be
/// cleared and a named clinician has cleared it; so does an open red flag, and a knee without sensation or without any voluntary contraction.
/// </summary>
/// <param name="Findings">Everything found, worst first; a safety stop bars stim.</param>
/// <param name="SessionsPerDayAtMost">The lowest cap of the precautions present; null for none.</param>
/// <param name="ContractionShareAtMost">The lowest cap on contractions of the precautions present; null for none.</param>
public sealed record StimGate(ImmutableArray<Finding> Findings, int? SessionsPerDayAtMost, Percentage? ContractionShareAtMost)
{
    private const string Cleared = "SCREEN-CLEARED";
    private const string Present = "SCREEN-PRECAUTION";

    private static readonly Source Usual = new("Screening before surface stimulation: each item with its own source in the library", Standing.Derived);

    private static readonly Source StartSource = new("Stim starts when sensation is back, screening is clear and a contraction is possible", Standing.CommonPractice);

    /// <summary>Whether stim is barred.</summary>
    public bool Barred => Findings.Any(finding => finding.Severity == Severity.Stop);

    /// <summary>Why stim is barred, a sentence each; empty when it is not.</summary>
    public ImmutableArray<string> Reasons => [.. Stops(Findings)];

    /// <summary>What whoever stimulates must know: everything that bars or warns, what was cleared and every precaution present, a sentence each.</summary>
    public ImmutableArray<string> Cautions =>
        [.. Findings.Where(finding => finding.Severity >= Severity.Warning || finding.Rule is Cleared or Present).Select(finding => finding.Text)];

    /// <summary>The gate of a case on a day.</summary>
    public static StimGate Of(Case patient, ClinicalLibrary library, DateOnly on)
    {
        List<ScreeningItem> present = [.. library.Screening.Where(item => item.Kind == ScreeningKind.Precaution && AnswerTo(patient, item) == Answer.Yes)];
        IEnumerable<Finding> found = Contraindications(patient, library).Concat(present.Select(item => Precaution(patient, item)))
            .Concat(Unasked(patient, library)).Concat(Flags(patient, library, on)).Concat(Start(patient, on));
        return new StimGate(
            [.. found.OrderByDescending(finding => finding.Severity)],
            present.Min(item => item.SessionsPerDayAtMost),
            present.Select(item => item.ContractionShareAtMost).OfType<Percentage>().Min());
    }

    /// <summary>Why screening alone bars stim; empty when it does not.</summary>
    internal static IEnumerable<string> ScreeningReasons(Case patient, ClinicalLibrary library) => Stops(Contraindications(patient, library).Concat(Unasked(patient, library)));

    /// <summary>Why the knee is not ready for a first session; empty when it is, or nobody has asked.</summary>
    internal static IEnumerable<string> StartReasons(Case patient, DateOnly on) => Stops(Start(patient, on));

    private static IEnumerable<string> Stops(IEnumerable<Finding> findings) =>
        findings.Where(finding => finding.Severity == Severity.Stop).Select(finding => finding.Text);

    private static IEnumerable<Finding> Contraindications(Case patient, ClinicalLibrary library)
    {
        foreach (ScreeningItem item in library.Screening.Where(item => item.Kind == ScreeningKind.Contraindication && AnswerTo(patient, item) == Answer.Yes))
        {
            Clearance? clearance = patient.Screening.Answers[item.Id].Clearance;
            bool cleared = item.CanBeCleared && clearance is not null;
            yield return new Finding
            {
                Rule = cleared ? Cleared : "SCREEN-CONTRAINDICATION",
                Severity = cleared ? Severity.Note : Severity.Stop,
                Text = cleared
                    ? $"Cleared by {clearance!.By} on {LadderFacts.Day(clearance.On)}: {item.Question} \"{clearance.Text}\""
                    : $"No stim: {item.Question} Yes. {item.Action}" + (clearance is not null ? " A clearance does not lift this item." : item.CanBeCleared ? " A named clinician's clearance would lift it." : ""),
                Inputs = [new Input(item.Question, "yes"), new Input("Where it counts", item.Where)],
                Source = item.Source,
            };
        }
    }

    private static IEnumerable<Finding> Unasked(Case patient, ClinicalLibrary library)
    {
        foreach (ScreeningKind kind in new[] { ScreeningKind.Contraindication, ScreeningKind.Precaution })
        {
            List<ScreeningItem> open = [.. library.Screening.Where(item => item.Kind == kind && AnswerTo(patient, item) is null or Answer.Unknown)];
            if (open.Count == 0)
            {
                continue;
            }

            bool bars = kind == ScreeningKind.Contraindication;
            yield return new Finding
            {
                Rule = bars ? "SCREEN-OPEN" : "SCREEN-OPEN-PRECAUTION",
                Severity = bars ? Severity.Stop : Severity.Note,
                Text = $"{(bars ? "No stim: " : "")}{open.Count} {(bars ? "contraindication" : "precaution")}{(open.Count == 1 ? " is" : "s are")} not answered or not known: {string.Join(", ", open.Select(item => item.Id))}.",
                Inputs = [.. open.Select(item => new Input(item.Question, AnswerTo(patient, item) is null ? "not asked" : "not known"))],
                Source = Usual,
            };
        }
    }

    private static Finding Precaution(Case patient, ScreeningItem item)
    {
        bool caps = item.SessionsPerDayAtMost is not null || item.ContractionShareAtMost is not null;
        string cap = (item.SessionsPerDayAtMost is int sessions ? $" Capped at {sessions} a day." : "")
            + (item.ContractionShareAtMost is { } share ? $" Capped at {share} of the contractions." : "");
        string by = patient.Screening.Answers[item.Id].Clearance is { } clearance ? $" Seen by {clearance.By} on {LadderFacts.Day(clearance.On)}." : "";
        return new Finding
        {
            Rule = Present,
            Severity = caps ? Severity.Warning : Severity.Note,
            Text = $"Precaution: {item.Question} Yes. {item.Action}{cap}{by}",
            Inputs = [new Input(item.Question, "yes"), new Input("Where it counts", item.Where)],
            Source = item.Source,
        };
    }

    private static IEnumerable<Finding> Flags(Case patient, ClinicalLibrary library, DateOnly on)
    {
        ImmutableArray<KneeState> states = [.. patient.Assessments.Where(one => one.Date <= on).Select(one => KneeState.At(one, patient))];
        return states.IsEmpty ? [] : FlagFindings.Of(new LadderFacts(patient, library, states, Rung.Familiarise, states[^1].Date));
    }

    private static IEnumerable<Finding> Start(Case patient, DateOnly on)
    {
        if (patient.StimSessions.Any())
        {
            yield break;
        }

        foreach ((string sign, string rule) in new[] { (Signs.SensationNormal, "START-SENSATION"), (Signs.ContractionVisible, "START-CONTRACTION") })
        {
            Assessment? asked = patient.Assessments.LastOrDefault(one => one.Date <= on && one.Sign(sign) is not null);
            bool? answer = asked?.Sign(sign);
            if (answer == true)
            {
                continue;
            }

            yield return new Finding
            {
                Rule = rule,
                Severity = answer is null ? Severity.Warning : Severity.Stop,
                Text = answer is null
                    ? $"Before the first session, ask: {Signs.Questions[sign]}"
                    : $"No stim yet: {Signs.Questions[sign]} No, on {LadderFacts.Day(asked!.Date)}. Wait until it is so.",
                Inputs = [new Input(Signs.Questions[sign], answer is null ? "not asked" : "no")],
                Source = StartSource,
            };
        }
    }

    private static Answer? AnswerTo(Case patient, ScreeningItem item) =>
        patient.Screening.Answers.TryGetValue(item.Id, out ScreeningAnswer? given) ? given.Answer : null;
}
