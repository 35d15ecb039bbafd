using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using Progression.App.Caseload;
using Progression.App.Pictures;
using Progression.Core.Caseload;
using Progression.Core.Entry;
using Progression.Core.Quantities;

namespace Progression.App.Start;

/// <summary>The list of cases: a line for each, and under it what is to be said of the one under the cursor. Only the lines that are seen are made.</summary>
internal static class StartList
{
    private const int WideFrom = 120;
    private const int ShortestCode = 8;
    private const int Telling = 2;

    /// <summary>How many cases are shown of how many, chosen how and in which order.</summary>
    internal static string Count(StartState state)
    {
        CaseChoice choice = state.Choice;
        string[] how =
        [
            .. choice.Filter == CaseFilter.All ? [] : new[] { CaseWords.Of(choice.Filter) },
            .. choice.Find.Length == 0 ? [] : new[] { $"\"{TextFit.Exactly(SafeText.OneLine(choice.Find), Math.Min(12, SafeText.Width(choice.Find)))}\"" },
            .. choice.Order == CaseOrder.Code ? [] : new[] { $"by {CaseWords.Of(choice.Order)}" },
        ];
        string all = state.Cases.Length == 1 ? "1 case" : $"{Whole(state.Cases.Length)} cases";
        string count = choice.Narrows ? $"{Whole(state.Shown.Length)} of {all}" : all;
        return how.Length == 0 ? count : $"{string.Join(", ", how)}: {count}";
    }

    internal static Picture Draw(StartState state, PictureSize size)
    {
        ImmutableArray<PictureRow> foot = [.. Told(state, size.Width), .. HitRate(state, size.Width)];
        PictureSize room = size with { Height = size.Height - foot.Length };
        ImmutableArray<CaseLine> cases = state.Shown;
        int shown = room.Height - 1;
        int first = Paging.First(state.Index, shown, cases.Length);
        ImmutableArray<CaseLine> seen = [.. cases.AsSpan(first, Math.Min(shown, cases.Length - first))];
        int code = seen.Select(line => line.Code.Text.Length).Append(ShortestCode).Max();
        bool wide = size.Width >= WideFrom;
        IEnumerable<PictureRow> rows = seen.IsEmpty
            ? [PictureRow.Of("  No case is like that. Esc shows all.")]
            : seen.Select((line, at) => Row(state, line, (code, wide, first + at == state.Index)));
        Picture list = new([Heading(code, wide), .. rows], seen.IsEmpty ? null : new CaretAt(0, 1 + state.Index - first));
        return list with { Rows = [.. list.Fit(room).Rows, .. foot] };
    }

    private static PictureRow Heading(int code, bool wide) => PictureRow.Of(
        $"{"Code".PadRight(code + 2)}{"Knee",-7}{(wide ? $"{"Operated",-12}" : "")}{"Week",-10}{"State",-7}{"Due",-23}{(wide ? $"{"Lag",-6}{"Flexion",-9}" : "")}"
            + $"{"Plan",-8}{(wide ? $"{"Assessed",-12}" : "")}Saved", Ink.Strong);

    /// <summary>A line of the list. Only its first part is shown as chosen: over a slow line a whole one would cost a step of the cursor twice as much.</summary>
    private static PictureRow Row(StartState state, CaseLine line, (int Code, bool Wide, bool Chosen) how)
    {
        (int code, bool wide, bool chosen) = how;
        CaseStanding? standing = line.Standing;
        string week = standing is null ? "" : line.Weeks is int weeks ? $"{standing.Week} of {weeks}" : $"{standing.Week}";
        string plan = line.Revision is int revision ? $"rev {revision}" : "none";
        string saved = wide ? $"{line.SavedAt.Humanize(state.Now)} by {line.SavedBy}" : $"{CaseTitle.ShortDay(DateOnly.FromDateTime(line.SavedAt.UtcDateTime))} {line.SavedBy}";
        PictureRow lead = new(
        [
            new($"{line.Code.Text.PadRight(code + 2)}{line.Knee,-7}{(wide ? $"{Day(line.Operation),-12}" : "")}{week,-10}"),
            .. Letters(line),
            new("  "),
        ]);
        PictureRow due = PictureRow.Of(TextFit.Exactly(CaseWords.Due(standing, state.Today), 22) + " ", standing?.IsDue == true ? Ink.Warning : Ink.Plain);
        return (chosen ? PictureRow.Of(lead.Text, Ink.Chosen) : lead).Then(due).Then(PictureRow.Of(
            $"{(wide ? $"{Degrees(standing?.Lag),-6}{Degrees(standing?.Flexion),-9}" : "")}{plan,-8}{(wide ? $"{Day(line.Assessed),-12}" : "")}{SafeText.OneLine(saved)}"));
    }

    private static IEnumerable<TextSpan> Letters(CaseLine line) => Enum.GetValues<CaseMark>().Select(mark => line.Has(mark)
        ? new TextSpan($"{CaseWords.Letter(line, mark)}", mark switch { CaseMark.Blocked => Ink.Stop, CaseMark.Unsigned => line.IsReturned ? Ink.Warning : Ink.Quiet, CaseMark.Draft => Ink.Note, _ => Ink.Warning })
        : new TextSpan(".", Ink.Quiet));

    /// <summary>What is to be said of the case under the cursor, always as many lines, so that the list does not jump.</summary>
    private static IEnumerable<PictureRow> Told(StartState state, int width)
    {
        string text = state.Chosen is { } line ? $"{line.Code}: {string.Join("; ", CaseWords.All(line, state.Today))}" : "";
        List<string> lines = [.. TextFit.Wrap(SafeText.OneLine(text), width)];
        string last = string.Join(' ', lines.Skip(Telling - 1));
        return lines.Take(Telling - 1).Append(TextFit.Exactly(last, width)).Concat(Enumerable.Repeat("", Telling)).Take(Telling).Select(one => PictureRow.Of(one, Ink.Note));
    }

    // A forecast that holds too seldom concerns every case, so it stands under the list and not in one plan.
    private static IEnumerable<PictureRow> HitRate(StartState state, int width) => state.HitRate is { Words: { } words } rate
        ? TextLines.Wrapped((rate.Warns ? "! " : "") + words, width, rate.Warns ? Ink.Warning : Ink.Quiet)
        : [];

    private static string Day(DateOnly? day) => day is DateOnly known ? $"{known:yyyy-MM-dd}" : "";

    private static string Degrees(double? degrees) => degrees is double known ? Number.Text(known, 0) : "";

    private static string Whole(int number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
