using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Exchange.Import;
using Progression.Records.Library;

namespace Progression.Exchange.Tests.Import;

/// <summary>An invented case to import into: operated on 2 February 2026, seen before it and in weeks 2 and 4.</summary>
internal static class SomeKnee
{
    public static ClinicalLibrary Library { get; } = LibraryReader.Default();

    public static DateOnly Operated { get; } = new(2026, 2, 2);

    public static DateOnly Today { get; } = new(2026, 3, 20);

    public static Case Patient { get; } = new()
    {
        Code = CaseCode.Parse("KNEE-1")!,
        Operation = new Operation(Operated, Side.Right, "total knee replacement"),
        PreOp = Visit(new DateOnly(2026, 1, 20), ("flexion_active", 110)),
        Assessments =
        [
            Visit(new DateOnly(2026, 2, 12), ("flexion_active", 70), ("extension_active", 12), ("extension_passive", 6)),
            Visit(new DateOnly(2026, 2, 26), ("flexion_active", 85)),
        ],
    };

    public static ImportGround Ground { get; } = new(Patient, Library, Today);

    public static Assessment Visit(DateOnly day, params (string Measure, double Value)[] readings) => new(
        day,
        readings.ToImmutableSortedDictionary(one => one.Measure, one => new Reading(one.Measure, one.Value), StringComparer.Ordinal),
        ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal))
    { Rater = "KL" };

    public static FoundReading Found(int row, DateOnly day, string measure, double value) => new(ImportPlace.Row(row, measure), day, new Reading(measure, value));

    public static ImportResult Coming(params FoundReading[] found) => ReadingImport.Of(Ground, found, []);
}
