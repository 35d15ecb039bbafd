using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>
/// Reads a case from a file a person wrote: YAML in our own form, described by shared/schema/case.schema.json and shown in shared/examples/case.yaml.
/// Quantities carry their unit. Whatever is wrong is told with file, line, field, what is allowed and what was found; nothing is thrown.
/// </summary>
public static class CaseFileReader
{
    /// <summary>The only value of the field "schema"; another form gets another number.</summary>
    internal const string Schema = "case-file/1";

    // Bounds for catching slips of entry, in kg; common practice, no source.
    private static readonly QuantityForm<Mass> BodyMass = QuantityText.Mass.Within(20, 350);

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file as the person named it.</param>
    /// <param name="library">The library whose measures, screening items and regimens the file may name.</param>
    /// <param name="today">The present day.</param>
    public static CaseFileResult Read(string path, ClinicalLibrary library, DateOnly today) => Read(YamlDocument.Read(path), path, library, today);

    /// <summary>Reads bytes that came from somewhere else than a file.</summary>
    /// <param name="name">What to call them in a message.</param>
    /// <param name="bytes">UTF-8 text.</param>
    /// <param name="library">As for a file.</param>
    /// <param name="today">As for a file.</param>
    public static CaseFileResult Read(string name, byte[] bytes, ClinicalLibrary library, DateOnly today) =>
        Read(YamlDocument.Read(name, bytes), name, library, today);

    private static CaseFileResult Read(YamlDocument document, string name, ClinicalLibrary library, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(library);
        if (document.Root is null)
        {
            return new CaseFileResult(null, document.Problems, []);
        }

        FileProblems problems = new(name);
        FileProblems queries = new(name);
        Case read = ReadCase(new Fields(document.Root, "", problems), new CaseReading(library, today, queries));
        return new CaseFileResult(problems.Count == 0 ? read : null, problems.InOrder(), queries.InOrder());
    }

    private static Case ReadCase(Fields fields, CaseReading reading)
    {
        fields.OneOf("schema", Need.Required, [Schema]);
        CaseCode? code = fields.As("code", Need.Required, CodeText);
        DateOnly? born = fields.Date("born", Need.Optional, new DaySpan(new DateOnly(1900, 1, 1), reading.Today));
        Operation? operation = OperationFields.Read(fields, born, reading.Today);
        reading = reading with { Operation = operation?.Date };
        // What is required and missing has made a problem already; the stand-ins below never leave this class.
        Case read = new()
        {
            Code = code ?? CaseCode.Parse("UNREAD")!,
            Operation = operation ?? new Operation(reading.Today, Side.Left, ""),
            Born = born,
            BodyMass = fields.As("body_mass", Need.Optional, BodyMass.Read),
            WeightBearing = fields.OneOf<WeightBearing>("weight_bearing", Need.Optional),
            OtherKnee = fields.OneOf<OtherKnee>("other_knee", Need.Optional) ?? OtherKnee.NotKnown,
            Surgeon = OperationFields.Surgeon(fields, reading),
            Therapist = fields.Text("therapist", Need.Optional),
            Stimulator = fields.Text("stimulator", Need.Optional),
            Pads = fields.As("pads", Need.Optional, PadText.Read),
            Screening = ScreeningFields.Read(fields, reading),
            PreOp = AssessmentFields.PreOp(fields, reading),
            Assessments = AssessmentFields.SinceOperation(fields, reading),
            Sessions = SessionFields.Read(fields, reading),
            FlagNotes = FlagNoteFields.Read(fields, reading),
            DeficitWritten = fields.OneOf<DeficitSign>("deficit_written", Need.Optional),
        };
        read = PlanFields.Read(fields, read, reading);
        fields.Done();
        return read;
    }

    /// <summary>Reads a case code.</summary>
    internal static Entered<CaseCode> CodeText(string field, string text) => CaseCode.Parse(text) is CaseCode code
        ? Entered<CaseCode>.Good(code)
        : Entered<CaseCode>.Bad(new Problem(field, "This is not a case code; a code stands for the person and is never a name.", CaseCode.Allowed, text));
}
