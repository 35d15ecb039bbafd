using System.Collections.Immutable;
using System.Text.Json;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Exchange.Import;
using Progression.Records.Codes;

namespace Progression.Exchange.Fhir;

/// <summary>
/// A FHIR R4 bundle of another program, put into a case: readings, answers, body mass and date of birth. All of it comes in or nothing; nothing that stands in
/// the case is written over. Resources other than Patient and Observation are left aside.
/// </summary>
public sealed record FhirImport
{
    private const string Observation = "Observation";
    private const string Patient = "Patient";

    private FhirImport()
    {
    }

    /// <summary>What the bundle comes to.</summary>
    public required ImportResult Result { get; init; }

    /// <summary>What was left aside, in words: "CarePlan (1)", "Extension lag, computed here (2)".</summary>
    public ImmutableArray<string> Left { get; init; } = [];

    /// <summary>Reads a bundle.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="ground">The case, the library and the day.</param>
    /// <param name="codes">The public codes that are known.</param>
    /// <param name="deficits">How extension deficits are written where the bundle comes from; null for as the case says, or not known.</param>
    public static FhirImport Of(byte[] bytes, ImportGround ground, StandardCodes codes, DeficitSign? deficits = null)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(ground);
        ArgumentNullException.ThrowIfNull(codes);
        (IncomingBundle bundle, JsonDocument? document) = IncomingBundle.Read(bytes);
        using (document)
        {
            return bundle.Entries.IsEmpty
                ? new FhirImport { Result = ImportResult.Refused(bundle.Problems) }
                : Of(bundle, ground, new ObservationReader(ground, codes, deficits));
        }
    }

    private static FhirImport Of(IncomingBundle bundle, ImportGround ground, ObservationReader reader)
    {
        IncomingPeople people = new(ground, bundle.Entries);
        List<ImportProblem> problems = [.. bundle.Problems, .. people.Problems];
        List<(IncomingEntry Entry, IncomingObservation Found)> found = [];
        foreach (IncomingEntry entry in bundle.Entries.Where(entry => entry.Type == Observation))
        {
            IncomingObservation one = people.WrongSubject(entry) is { } other ? new IncomingObservation { Problem = other } : reader.Read(entry);
            found.Add((entry, one));
            if (one.Problem is { } problem)
            {
                problems.Add(problem);
            }
        }

        ImportResult readings = ReadingImport.Of(ground, found.Select(one => one.Found.Reading).OfType<FoundReading>(), problems);
        IncomingExtras extras = new(ground, readings.Case ?? ground.Patient);
        extras.Add(found.Select(one => one.Found.Answer).OfType<FoundAnswer>());
        extras.Add(found.Where(one => one.Found.BodyMass is not null).Select(one => (one.Entry.At("valueQuantity"), Mass.FromKilograms(one.Found.BodyMass!.Value))));
        extras.Add(people.Born);
        return new FhirImport
        {
            Result = ImportResult.Of(
                extras.Case, [.. readings.Lines, .. extras.Lines], readings.Problems.Concat(extras.Problems), people.Query is { } query ? readings.Queries.Append(query) : readings.Queries),
            Left = [.. LeftAside(bundle.Entries.Select(entry => entry.Type).Where(type => type is not (Observation or Patient))), .. LeftAside(found.Select(one => one.Found.Computed).OfType<string>().Select(title => title + ", computed here"))],
        };
    }

    private static IEnumerable<string> LeftAside(IEnumerable<string> names) =>
        names.GroupBy(name => name, StringComparer.Ordinal).OrderBy(same => same.Key, StringComparer.Ordinal).Select(same => $"{Core.Entry.Found.Of(same.Key)} ({same.Count()})");
}
