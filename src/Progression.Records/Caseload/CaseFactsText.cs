using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Caseload;
using Progression.Core.People;

namespace Progression.Records.Caseload;

/// <summary>The facts of a case as the short texts a list keeps. Ids hold letters, digits, hyphens and underscores, so none of the marks between them.</summary>
internal static class CaseFactsText
{
    private static readonly (Answer Answer, bool Cleared, string Mark)[] Marks = [(Answer.No, false, "n"), (Answer.Yes, false, "y"), (Answer.Yes, true, "c"), (Answer.Unknown, false, "u")];

    /// <summary>"n:pacemaker,fracture;c:thrombosis": the items by answer; c is a yes that was cleared. Null when nothing was answered.</summary>
    internal static string? Of(Screening screening)
    {
        string text = string.Join(';',
            from mark in Marks
            let items = screening.Answers.Values.Where(one => one.Answer == mark.Answer && (one.Answer == Answer.Yes && one.Clearance is not null) == mark.Cleared).ToList()
            where items.Count > 0
            select $"{mark.Mark}:{string.Join(',', items.Select(one => one.Item))}");
        return text.Length == 0 ? null : text;
    }

    /// <summary>"18:97,,8,4,10,41.5,:nny": the day, seven values with nothing between the commas where none was measured, and the answers.</summary>
    internal static string? Of(ImmutableArray<VisitFacts> visits) => visits.IsEmpty ? null : string.Join(';', visits.Select(visit =>
    {
        double?[] values = [visit.FlexionActive, visit.FlexionPassive, visit.ExtensionActive, visit.ExtensionPassive, visit.StraightLegRaises, visit.PreOpShare, visit.Index];
        return string.Create(CultureInfo.InvariantCulture, $"{visit.Day}:{string.Join(',', values.Select(value => value?.ToString("R", CultureInfo.InvariantCulture)))}:{visit.Answers}");
    }));

    /// <summary>"clot-leg@12,stiff@44": the flag and the day of the note, counted from the operation.</summary>
    internal static string? Of(ImmutableArray<FlagNote> notes, DateOnly operation) => notes.IsEmpty ? null : string.Join(',', notes.Select(note =>
        string.Create(CultureInfo.InvariantCulture, $"{note.Flag}@{PostOpWeek.DayOf(operation, note.On)}")));

    internal static Screening Screening(string text)
    {
        ImmutableSortedDictionary<string, ScreeningAnswer>.Builder answers = ImmutableSortedDictionary.CreateBuilder<string, ScreeningAnswer>(StringComparer.Ordinal);
        foreach (string part in text.Split(';'))
        {
            (Answer answer, bool cleared, _) = Marks.First(one => part.StartsWith(one.Mark, StringComparison.Ordinal));
            foreach (string item in part[2..].Split(','))
            {
                answers[item] = new ScreeningAnswer(item, answer, cleared ? new Clearance("", DateOnly.MinValue, "") : null);
            }
        }

        return new Screening(null, answers.ToImmutable());
    }

    internal static ImmutableArray<VisitFacts> Visits(string text)
    {
        VisitFacts[] visits = new VisitFacts[text.AsSpan().Count(';') + 1];
        int count = 0;
        foreach (Range range in text.AsSpan().Split(';'))
        {
            visits[count++] = Visit(text.AsSpan(range));
        }

        return ImmutableArray.Create(visits);
    }

    internal static ImmutableArray<FlagNote> Notes(string text, DateOnly operation) =>
        [.. text.Split(',').Select(note => note.Split('@')).Select(note => new FlagNote(note[0], operation.AddDays(Whole(note[1])), "", ""))];

    internal static int Whole(ReadOnlySpan<char> text) => int.Parse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    private static VisitFacts Visit(ReadOnlySpan<char> text)
    {
        int day = text.IndexOf(':');
        int end = text.LastIndexOf(':');
        Span<Range> at = stackalloc Range[8];
        ReadOnlySpan<char> values = text[(day + 1)..end];
        if (values.Split(at, ',') != 7)
        {
            throw new FormatException("A visit of the list has not seven values.");
        }

        return new VisitFacts(Whole(text[..day]))
        {
            FlexionActive = Value(values[at[0]]),
            FlexionPassive = Value(values[at[1]]),
            ExtensionActive = Value(values[at[2]]),
            ExtensionPassive = Value(values[at[3]]),
            StraightLegRaises = Value(values[at[4]]),
            PreOpShare = Value(values[at[5]]),
            Index = Value(values[at[6]]),
            Answers = text[(end + 1)..].ToString(),
        };
    }

    private static double? Value(ReadOnlySpan<char> text) => text.IsEmpty ? null : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
