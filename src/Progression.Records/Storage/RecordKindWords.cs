namespace Progression.Records.Storage;

/// <summary>How kinds are written in the journal.</summary>
internal static class RecordKindWords
{
    public static string Word(this RecordKind kind) => kind switch
    {
        RecordKind.Case => "case",
        RecordKind.Plan => "plan",
        RecordKind.Forecasts => "forecasts",
        RecordKind.Review => "review",
        RecordKind.Audit => "audit",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of record."),
    };

    /// <summary>The kind; null for a word that this version does not know.</summary>
    public static RecordKind? Parse(string? word) =>
        Enum.GetValues<RecordKind>().Select(kind => (RecordKind?)kind).FirstOrDefault(kind => kind!.Value.Word() == word);
}
