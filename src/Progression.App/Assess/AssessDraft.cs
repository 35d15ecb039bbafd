using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Forms;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Assess;

/// <summary>The form of an assessment as texts on disk, and back.</summary>
public static class AssessDraft
{
    private const string Visit = "visit";
    private const string Sign = "sign";
    private const string PreOp = "before-operation";
    private const string Detail = "detail ";
    private const string Open = "open ";
    private const string OpenFor = "open";
    private static readonly ImmutableArray<string> DetailParts = ["device", "position", "rater", "steps"];

    /// <summary>Names the form among those of a case: a correction and a new visit do not write over each other.</summary>
    public static string FormOf(AssessState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Standing is null ? "assessment" : "correction";
    }

    /// <summary>What was typed; null when nothing was.</summary>
    public static KeptForm? Of(AssessState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Form.IsTouched && state.Details.IsEmpty && state.Aside is not { IsTouched: true })
        {
            return null;
        }

        return new KeptForm(state.Desk.Case.Code, FormOf(state))
        {
            At = state.Form.Current.Id,
            // The day also where it was not typed: on another day the form would open with that day.
            Fields = state.Form.Texts.ById.SetItem(AssessLines.Date, state.Form.TextOf(AssessLines.Date)),
            Further = FormTexts.Of(Further(state)),
        };
    }

    /// <summary>The form as it was left, on the case as it is now.</summary>
    /// <param name="desk">What the form reads.</param>
    /// <param name="kept">What was kept of it.</param>
    public static AssessState Restored(AssessDesk desk, KeptForm kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        DateOnly? visit = kept.Further.TryGetValue(Visit, out string? day) && DateOnly.TryParseExact(day, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date) ? date : null;
        AssessState state = AssessState.Open(desk, visit);
        if (state.Sign is null && Enum.TryParse(kept.Further.GetValueOrDefault(Sign), out DeficitSign sign))
        {
            state = state with { Sign = sign, Form = AssessLines.Labelled(state.Form, sign) };
            state = state.Standing is { } standing ? AssessVisits.Correct(state, standing) : state;
        }

        state = state with
        {
            Form = state.Form.With(new FormTexts(kept.Fields, kept.At ?? "")),
            IsPreOp = state.IsPreOp || kept.Further.ContainsKey(PreOp),
            Details = state.Details.AddRange(DetailsOf(kept)),
            Status = FormTexts.Told(kept.Fields, state.Form),
        };
        return kept.Further.TryGetValue(OpenFor, out string? mode) ? Reopened(state, mode, kept) : state;
    }

    /// <summary>What was typed, line by line, each with its name and what stood there before.</summary>
    public static IEnumerable<(string Place, string Before, string Draft)> Lines(AssessState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return
        [
            .. state.Form.Lines.Where(line => line.IsTouched).Select(line => (line.Title, line.Given, line.Text)),
            .. state.Details.OrderBy(detail => detail.Key, StringComparer.Ordinal).Select(detail => ($"{state.Form.Line(detail.Key)?.Title}: how taken", "", $"{detail.Value}")),
            .. (state.Aside?.Lines ?? []).Where(line => line.IsTouched).Select(line => (line.Title, line.Given, line.Text)),
        ];
    }

    private static IEnumerable<(string Name, string? Text)> Further(AssessState state) =>
    [
        (Visit, state.Standing?.Date.ToString("O", CultureInfo.InvariantCulture)),
        (Sign, state.Sign?.ToString()),
        (PreOp, state is { IsPreOp: true, Standing: null } ? "yes" : null),
        (OpenFor, state.Aside is null ? null : state.Mode.ToString()),
        .. state.Details.SelectMany(detail => DetailParts.Select(part => ($"{Detail}{detail.Key} {part}", (string?)PartOf(detail.Value, part)))),
        .. state.Aside?.Texts.ById.Select(text => ($"{Open}{text.Key}", (string?)text.Value)) ?? [],
    ];

    private static AssessState Reopened(AssessState state, string mode, KeptForm kept)
    {
        AssessState opened = mode == nameof(AssessMode.Detail) && state.Desk.Library.Measures.ContainsKey(state.Form.Current.Id) ? AssessFlow.AskDetail(state)
            : mode == nameof(AssessMode.Reason) && state.Standing is not null ? AssessFlow.AskReason(state)
            : state;
        return opened.Aside is not { } aside ? state
            : opened with { Aside = aside.With(new FormTexts(FormTexts.Of(kept.Further.Where(text => text.Key.StartsWith(Open, StringComparison.Ordinal)).Select(text => (text.Key[Open.Length..], (string?)text.Value))), "")) };
    }

    private static IEnumerable<KeyValuePair<string, ReadingDetail>> DetailsOf(KeptForm kept) => kept.Further.Keys
        .Where(name => name.StartsWith(Detail, StringComparison.Ordinal)).Select(name => name.Split(' ')[1]).Distinct()
        .Select(id => KeyValuePair.Create(id, new ReadingDetail(
            kept.Further.GetValueOrDefault($"{Detail}{id} device"),
            kept.Further.GetValueOrDefault($"{Detail}{id} position"),
            kept.Further.GetValueOrDefault($"{Detail}{id} rater"),
            int.TryParse(kept.Further.GetValueOrDefault($"{Detail}{id} steps"), NumberStyles.None, CultureInfo.InvariantCulture, out int steps) ? steps : null)));

    private static string? PartOf(ReadingDetail detail, string part) => part switch
    {
        "device" => detail.Device,
        "position" => detail.Position,
        "rater" => detail.Rater,
        _ => detail.Steps?.ToString(CultureInfo.InvariantCulture),
    };
}
