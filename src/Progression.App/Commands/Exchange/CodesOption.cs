using System.CommandLine;
using Progression.Core.Entry;
using Progression.Records.Codes;
using Progression.Exchange.Import;

namespace Progression.App.Commands.Exchange;

/// <summary>The option that names a clinic's own table of public codes, laid over the shipped one.</summary>
internal static class CodesOption
{
    internal static Option<string?> Make() => new("--codes") { Description = "A clinic's own table of codes, as shared/codes of the project shows it; it comes before the shipped one.", HelpName = "FILE" };

    /// <summary>The codes; null after what is wrong was collected, or where none are named.</summary>
    internal static StandardCodes? Of(Option<string?> option, GivenOptions given) => given.Take(option, Read);

    private static Entered<StandardCodes> Read(string field, string? path)
    {
        Entered<byte[]> bytes = ImportFile.Read(path ?? "");
        if (bytes.Value is null)
        {
            return Entered<StandardCodes>.Bad([.. bytes.Problems.Select(problem => problem with { Field = field })]);
        }

        var (codes, problems) = StandardCodesReader.Read(path!, bytes.Value);
        return codes is not null
            ? Entered<StandardCodes>.Good(codes)
            : Entered<StandardCodes>.Bad([.. problems.Select(problem => new Problem($"{field}, line {problem.Line ?? 1}, {problem.Field}", problem.Wrong, problem.Allowed, problem.Found))]);
    }
}
