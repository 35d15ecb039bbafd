using System.Globalization;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Writes a logged session as it stands in a case file.</summary>
internal static class SessionLines
{
    /// <summary>Its lines.</summary>
    public static void Write(YamlLines lines, SessionLog session)
    {
        lines.Value("date", DaySpan.Text(session.Date));
        lines.Value("contractions", Text(session.Contractions));
        lines.Value("peak", MeasureText.Amount(session.Peak?.Milliamperes, "mA"));
        lines.Value("comfort", Text(session.Comfort));
        lines.Value("evoked", MeasureText.Amount(session.Evoked?.NewtonMetres, "Nm"));
        lines.Value("strong_contraction_tolerated", session.StrongContractionTolerated is bool strong ? (strong ? "yes" : "no") : null);
        lines.List("exercises", session.Exercises, done => Write(lines, done));
        lines.Value("pain_before", Text(session.PainBefore));
        lines.Value("pain_after", Text(session.PainAfter));
        lines.Value("pain_next_morning", Text(session.PainNextMorning));
        lines.Value("skin", session.Skin is SkinCheck skin ? EnumWords.Of(skin) : null);
        lines.Value("adherence", MeasureText.Amount(session.Adherence?.Percent, "%"));
        lines.Text("note", session.Note);
    }

    private static void Write(YamlLines lines, ExerciseDone done)
    {
        lines.Value("exercise", done.Exercise);
        lines.Value("sets", done.Sets.IsEmpty ? null : $"[{string.Join(", ", done.Sets.Select(SetText.Write))}]");
        lines.Value("time", MeasureText.Amount(done.Time?.Seconds, "s"));
    }

    private static string? Text(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
