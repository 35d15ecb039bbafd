using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Reviews;

namespace Progression.App.Grid;

/// <summary>The pages of a review: where it stands, and the form of a signature.</summary>
internal static class ReviewPages
{
    public static Picture Overview(GridState state, PictureSize room) => ScrolledText.Of(ReviewText.Lines(state, room.Width), state.Scroll, room);

    /// <summary>The form of a signature: who signs what, what stands against it, what it says, a comment.</summary>
    public static Picture Signature(GridState state, PictureSize room)
    {
        List<PictureRow> rows = [.. Lines(state, room.Width)];
        CaretAt? caret = null;
        if (state.Mode == GridMode.Sign)
        {
            (PictureRow line, int column) = LineField.Of(state.Entry!.Line, room.Width);
            caret = new(column, rows.Count);
            rows.Add(line);
        }
        else
        {
            rows.Add(PictureRow.Of("  " + (state.Entry!.Line.Text is { Length: > 0 } text ? SafeText.OneLine(text) : "none"), Ink.Plain));
            rows.Add(PictureRow.Empty);
            rows.AddRange(TextLines.Wrapped(Question(state), room.Width, Ink.Strong));
        }

        if (state is { Mode: GridMode.Sign, Entry.Problem: { } problem })
        {
            rows.AddRange(TextLines.Wrapped(problem.ToString(), room.Width, Ink.Stop));
        }

        return new([.. rows], caret);
    }

    public static string Question(GridState state) => $"y signs revision {state.Review!.Standing.Plan.Revision} as {state.Review.Person.Name}; Esc goes back.";

    public static IEnumerable<string> SignatureWordsOf(GridState state) => RowWords.Of(Lines(state, RowWords.Unbroken));

    /// <summary>What is typed now, as a heading or a question.</summary>
    public static string Heading(GridState state) => state.Mode switch
    {
        GridMode.Comment => $"{state.Lane.Title}, week {state.Week}: your comment",
        GridMode.Remark => "Your comment on the plan as a whole",
        GridMode.Return => "Returned with which comment: what is to be changed, and why?",
        GridMode.Ask => "A review is asked for. A word to who reads it, or Enter alone",
        _ => "A comment with the signature",
    };

    private static IEnumerable<PictureRow> Lines(GridState state, int width)
    {
        GridReview review = state.Review!;
        ImmutableArray<Finding> severe = [.. state.Findings.Where(finding => finding.Severity >= Severity.Severe)];
        return
        [
            .. TextLines.Labelled("Signs", $"{SafeText.OneLine(review.Person.Name)}, account {SafeText.OneLine(review.Person.UserId)}", width),
            .. TextLines.Labelled("Plan", $"{state.Plan.Code}, revision {review.Standing.Plan.Revision}, hash {SignatureWords.Short(review.Standing.Plan.Hash)}", width),
            .. TextLines.Labelled("Findings", FindingWords.Counts(state.Findings), width),
            .. severe.SelectMany(finding => TextLines.Wrapped(FindingWords.Line(finding), width, FindingWords.InkOf(finding.Severity))),
            PictureRow.Empty,
            PictureRow.Of("What the signature says (Up and Down choose)", Ink.Strong),
            .. Enum.GetValues<SignatureMeaning>().SelectMany(meaning => Meaning(meaning, meaning == review.Meaning, width)),
            PictureRow.Empty,
            PictureRow.Of(severe.IsEmpty ? "A comment with it, or nothing" : "Why that is right all the same", Ink.Strong),
        ];
    }

    private static IEnumerable<PictureRow> Meaning(SignatureMeaning meaning, bool chosen, int width) =>
        TextFit.Wrap(SignatureWords.Of(meaning), width - 4).Select((part, at) => PictureRow.Of((at == 0 && chosen ? "> " : "  ") + part, chosen ? Ink.Chosen : Ink.Plain));
}
