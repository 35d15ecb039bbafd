using Progression.App.Forms;
using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>The small forms that are opened from the form of an assessment: how a reading was taken, and why a visit is corrected.</summary>
internal static class AssessAside
{
    private const int MostLetters = 60;
    private const int MostReason = 300;
    private const int MostSteps = 60;
    private const string By = "by";
    private const string Why = "why";

    public static Form AskReason(Assessment standing, string rater)
    {
        string group = $"Values of {DayWords.Typed(standing.Date)} are corrected; the old ones are kept with this";
        return Form.Of(new FormLine(By, group, "Corrected by") { Given = rater, IsText = true }, new FormLine(Why, group, "Why") { IsText = true });
    }

    public static CorrectionReason Reason(Form aside) => new(aside.TextOf(By), aside.TextOf(Why));

    public static ReadingDetail Detail(Form aside) => new(
        FreeText.OrNull(aside.TextOf("device")),
        FreeText.OrNull(aside.TextOf("position")),
        FreeText.OrNull(aside.TextOf("rater")),
        WholeNumberText.Read("", aside.TextOf("steps"), 1, MostSteps).Value?.Count);

    public static Problem? Wrong(FormLine line) => line.Id switch
    {
        By => FreeText.Wrong(line.Title, line.Text, MostLetters, isNeeded: true),
        Why => FreeText.Wrong(line.Title, line.Text, MostReason, isNeeded: true),
        "steps" => line.Text.Length == 0 ? null : WholeNumberText.Read(line.Title, line.Text, 1, MostSteps).Problems.FirstOrDefault(),
        _ => FreeText.Wrong(line.Title, line.Text, MostLetters),
    };
}
