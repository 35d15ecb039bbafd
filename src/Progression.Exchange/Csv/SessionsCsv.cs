using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Cases;

namespace Progression.Exchange.Csv;

/// <summary>The logged sessions of a case as a table, one row for each, oldest first.</summary>
public static class SessionsCsv
{
    /// <summary>The columns that tell what was done, by the names they have in a session file.</summary>
    internal static readonly ImmutableArray<string> Fields =
    [
        "contractions", "peak", "comfort", "evoked", "strong_contraction_tolerated", Exercises,
        "pain_before", "pain_after", "pain_next_morning", "skin", "adherence", "note",
    ];

    /// <summary>The unit of each column that has one.</summary>
    internal static readonly ImmutableDictionary<string, string> Units =
        new Dictionary<string, string> { ["peak"] = "mA", ["evoked"] = "Nm", ["adherence"] = "%" }.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>The column of what was done: "quad-set: 10, 10 @ 5 kg; brisk-walk: 900 s".</summary>
    internal const string Exercises = "exercises";

    /// <summary>The table.</summary>
    public static string Of(Case patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        CsvWriter csv = new([CsvField.Code, CsvField.Date, CsvField.Week, .. Fields.Select(field => Units.TryGetValue(field, out string? unit) ? $"{field} ({unit})" : field)]);
        foreach (SessionLog session in patient.Sessions)
        {
            csv.Text(patient.Code.Text).Text($"{session.Date:yyyy-MM-dd}").Number(Whole(PostOpWeek.Of(patient.Operation.Date, session.Date)))
                .Number(Whole(session.Contractions)).Number(Amount(session.Peak?.Milliamperes)).Number(Whole(session.Comfort)).Number(Amount(session.Evoked?.NewtonMetres))
                .Text(session.StrongContractionTolerated switch { true => "yes", false => "no", _ => null }).Text(string.Join("; ", session.Exercises.Select(Done)))
                .Number(Whole(session.PainBefore)).Number(Whole(session.PainAfter)).Number(Whole(session.PainNextMorning))
                .Text(Skin(session.Skin)).Number(Amount(session.Adherence?.Percent)).Text(session.Note);
        }

        return csv.ToString();
    }

    private static string Done(ExerciseDone done) => done.Time is { } time ? $"{done.Exercise}: {MeasureText.Amount(time.Seconds)} s"
        : done.Sets.IsEmpty ? done.Exercise
        : $"{done.Exercise}: {string.Join(", ", done.Sets.Select(SetText.Write))}";

    private static string? Skin(SkinCheck? skin) => skin switch
    {
        SkinCheck.Clear => "clear",
        SkinCheck.FadingRedness => "fading redness",
        SkinCheck.Damaged => "damaged",
        _ => null,
    };

    private static string? Amount(double? value) => value is { } amount ? MeasureText.Amount(amount) : null;

    private static string? Whole(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
