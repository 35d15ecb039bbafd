using System.CommandLine;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Exchange.Fhir;
using Progression.Records.Codes;

namespace Progression.App.Commands.Exchange;

/// <summary><c>progression import fhir</c>: readings, answers, body mass and date of birth of a bundle.</summary>
internal sealed class ImportFhirCommand(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries)
{
    private const string Name = "import fhir";

    private readonly ImportDesk _desk = new(output, environment, stores);
    private readonly Option<string?> _deficits = new("--deficits") { Description = $"How extension deficits are written under public codes: positive ({WrittenDeficit.Words(DeficitSign.Positive)}) or negative. Default: as the case says.", HelpName = "positive|negative" };
    private readonly Option<string?> _codes = CodesOption.Make();

    internal Command Build()
    {
        ExampledCommand command = new("fhir", "Puts the readings of a bundle of HL7 FHIR R4 into a saved case: all of them, or none.", $"""
            The preview tells what each entry becomes on which day, what is there already, and every refusal by entry and field. Nothing that stands in
            the case is written over. Read are Patient and Observation of a bundle of type collection, searchset or transaction; units by their UCUM
            code. Other resources are left aside, and named.

            Examples:
              progression import fhir bundle.json --case EXAMPLE-07
              progression import fhir bundle.json --case EXAMPLE-07 --yes

            {ExitCode.Help}
            """)
        { _desk.File, _desk.Case, _deficits, _codes, _desk.Yes, _desk.Confirmed, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        GivenOptions given = new(line);
        DeficitSign? deficits = given.Word(_deficits, [("positive", DeficitSign.Positive), ("negative", DeficitSign.Negative)]);
        StandardCodes codes = StandardCodesReader.Shipped().Under(CodesOption.Of(_codes, given));
        (ClinicalLibrary? library, int code) = libraries.Read(Name, line);
        if (given.Problems.Count > 0 || library is null)
        {
            output.Problems(Name, given.Problems);
            return library is null ? code : ExitCode.Usage;
        }

        (ImportAtHand? at, code) = _desk.Open(Name, library, line);
        if (at is null || _desk.IsRefused(Name, at))
        {
            return at is null ? code : ExitCode.NotPermitted;
        }

        (byte[]? bytes, code) = _desk.Bytes(Name, line);
        if (bytes is null)
        {
            return code;
        }

        FhirImport read = FhirImport.Of(bytes, at.Ground, codes, deficits);
        if (!read.Left.IsEmpty)
        {
            output.Message($"progression {Name}: left aside: {string.Join(", ", read.Left)}.");
        }

        return _desk.Finish(Name, at, read.Result, (line, "fhir"));
    }
}
