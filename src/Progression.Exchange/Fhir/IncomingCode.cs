using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Exchange.Import;
using Progression.Records.Codes;

namespace Progression.Exchange.Fhir;

/// <summary>Which measure the codes of an observation mean. Codes of ours say all; a public code says what its table says, and words alone say nothing.</summary>
/// <param name="ground">The case, the library and the day.</param>
/// <param name="codes">The public codes that are known.</param>
internal sealed class IncomingCode(ImportGround ground, StandardCodes codes)
{
    private const string Ours = "the id of a measure or sign of this program";

    /// <summary>The measure, and whether the code is one of ours, which says how it is written; or what is wrong.</summary>
    public (string Measure, bool IsOurs, ImportProblem? Problem) Measure(IncomingEntry entry)
    {
        ImmutableArray<(string System, string Code)> codings = [.. entry.Resource.Codings("code")];
        ImmutableArray<string> ours = [.. codings.Where(one => one.System == FhirSystems.Measure).Select(one => one.Code).Distinct()];
        ImmutableArray<StandardCode> known = [.. codings.Select(one => codes.Find(one.System, one.Code)).OfType<StandardCode>()];
        (string Wrong, string Allowed)? problem =
            known.Any(code => code.Side is Side side && side != ground.Patient.Operation.Side) ? ("This is of the other knee.", $"readings of the {FhirDraft.Word(ground.Patient.Operation.Side)} knee")
            : ours.Length > 1 || known.Any(code => ours.Any(id => !code.Measures.Contains(id))) ? ("The codes do not mean the same.", "codes of one measure")
            : null;
        if (problem is { } contradiction)
        {
            return Refused(entry, contradiction);
        }

        if (ours.Length == 1)
        {
            return ground.Library.Measures.ContainsKey(ours[0]) ? (ours[0], true, null) : Refused(entry, ("There is no such measure.", "the id of a measure of the library"));
        }

        ImmutableArray<string> read = [.. known.Where(code => code.Use != CodeUse.Out).SelectMany(code => code.Measures).Distinct()];
        return read.Length == 1 && (read[0] == StandardCode.BodyMass || ground.Library.Measures.ContainsKey(read[0])) ? (read[0], false, null)
            : Refused(entry, known.FirstOrDefault(code => code.Use == CodeUse.Out) is { } vague ? (vague.Note ?? "The code says too little.", Ours) : ("This code is not known here.", Allowed));
    }

    private string Allowed => $"{Ours}, or " + string.Join(", ", codes.All
        .Where(code => code.Use != CodeUse.Out && (code.Side is null || code.Side == ground.Patient.Operation.Side))
        .Select(code => $"{code.Code} ({code.Meaning})"));

    private static (string, bool, ImportProblem?) Refused(IncomingEntry entry, (string Wrong, string Allowed) problem)
    {
        string coded = string.Join(", ", entry.Resource.Codings("code").Select(one => $"{one.System} {one.Code}"));
        return ("", false, new ImportProblem(entry.At("code"), problem.Wrong, problem.Allowed, coded.Length > 0 ? coded : entry.Resource.Part("code")?.Text("text") ?? ""));
    }
}
