using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Intake;

/// <summary>The screening as texts on disk, and back; a clearance that is being typed goes with it.</summary>
public static class ScreeningDraft
{
    /// <summary>Names it among the forms of a case.</summary>
    public const string FormName = "screening";

    private const string Open = "open ";

    /// <summary>What was answered; null when nothing was.</summary>
    public static KeptForm? Of(ScreeningState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        bool clears = state is { Mode: ScreeningMode.Clearance, Aside.IsTouched: true };
        return !state.IsTouched && !clears ? null : new KeptForm(state.Case.Code, FormName)
        {
            At = state.Chosen?.Id,
            Fields = state.Texts.ById,
            Further = FormTexts.Of(clears ? state.Aside!.Texts.ById.Select(text => (Open + text.Key, (string?)text.Value)) : []),
        };
    }

    /// <summary>The screening as it was left, on the case as it is now.</summary>
    /// <param name="start">It as it is opened on the case.</param>
    /// <param name="kept">What was kept of it; null for nothing.</param>
    public static ScreeningState Restored(ScreeningState start, KeptForm? kept)
    {
        ArgumentNullException.ThrowIfNull(start);
        if (kept is null)
        {
            return start;
        }

        ScreeningState left = start.With(new FormTexts(kept.Fields, kept.At ?? "")) with { Status = "As it was left." };
        ImmutableSortedDictionary<string, string> open = FormTexts.Of(kept.Further.Where(text => text.Key.StartsWith(Open, StringComparison.Ordinal)).Select(text => (text.Key[Open.Length..], (string?)text.Value)));
        return open.IsEmpty || ScreeningFlow.WhyNoClearance(left) is not null ? left
            : ScreeningFlow.AskClearance(left) is var asked ? asked with { Aside = asked.Aside!.With(new FormTexts(open, "")) } : left;
    }

    /// <summary>What was answered, question by question, with the answer that stood there before.</summary>
    public static IEnumerable<(string Place, string Before, string Draft)> Lines(ScreeningState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return from item in state.Items
               let before = Words(state.Case.Screening.Answers.GetValueOrDefault(item.Id))
               let now = Words(state.Answers.GetValueOrDefault(item.Id))
               where before != now
               select (item.Question, before, now);
    }

    private static string Words(ScreeningAnswer? answer) => answer is null ? YesNo.Word(null)
        : YesNo.Word(answer.Answer) + (answer.Clearance is { } clearance ? $", cleared by {clearance.By}: {clearance.Text}" : "");
}
