using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;

namespace Progression.Exchange.Import;

/// <summary>A file before it comes in, as a person reads it: everything that would come in, is there already, is asked back or is refused.</summary>
public static class ImportPreview
{
    /// <summary>Most refusals told one by one; the rest is counted.</summary>
    public const int MostProblems = 100;

    /// <summary>The lines of the preview.</summary>
    /// <param name="result">What the file comes to.</param>
    /// <param name="code">The code of the case.</param>
    public static ImmutableArray<string> Lines(ImportResult result, string code)
    {
        ArgumentNullException.ThrowIfNull(result);
        return
        [
            $"{code}: {Summary(result)}",
            .. Found(result, ImportFate.ComesIn, "Would come in"),
            .. Found(result, ImportFate.IsThere, "In the case already, left out"),
            .. Found(result, ImportFate.Repeated, "Twice in the file, taken once"),
            .. Told(result.Queries, "Asked back, please check"),
            .. Told(result.Problems, "Refused"),
        ];
    }

    /// <summary>One sentence on what the file comes to.</summary>
    public static string Summary(ImportResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Problems.Length > 0 ? $"{Count(result.Problems.Length, "refusal")}, so nothing comes in."
            : result.Coming == 0 ? "nothing that the case has not already."
            : result.Queries.IsEmpty ? $"{result.Coming} would come in." : $"{result.Coming} would come in, {Count(result.Queries.Length, "question")} asked back.";
    }

    private static IEnumerable<string> Found(ImportResult result, ImportFate fate, string heading)
    {
        ImmutableArray<ImportLine> lines = [.. result.Lines.Where(line => line.Fate == fate)];
        int place = lines.Select(line => line.Place.At.Length).DefaultIfEmpty().Max();
        int what = lines.Select(line => SafeText.Width(SafeText.OneLine(line.What))).DefaultIfEmpty().Max();
        foreach (IGrouping<string, ImportLine> visit in lines.GroupBy(line => line.Visit))
        {
            yield return $"{heading}, {visit.Key}:";
            foreach (ImportLine line in visit)
            {
                string name = SafeText.OneLine(line.What);
                yield return $"  {line.Place.At.PadRight(place)}  {name}{new string(' ', what - SafeText.Width(name))}  {SafeText.OneLine(line.Value)}".TrimEnd();
            }
        }
    }

    private static IEnumerable<string> Told(ImmutableArray<ImportProblem> problems, string heading) => problems.IsEmpty
        ? []
        : [heading + ":", .. problems.Take(MostProblems).Select(problem => $"  {problem}"), .. Rest(problems.Length - MostProblems)];

    private static IEnumerable<string> Rest(int count) => count <= 0 ? [] : [$"  and {count.ToString(CultureInfo.InvariantCulture)} more."];

    private static string Count(int count, string word) => count.ToString(CultureInfo.InvariantCulture) + " " + word + (count == 1 ? "" : "s");
}
