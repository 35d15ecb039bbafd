using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>A cell that is not empty.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Text">Its text, spaces at the ends and the guard of a formula taken off.</param>
/// <param name="Column">Its column.</param>
internal sealed record CsvCell(ImportPlace Place, string Text, CsvColumn Column)
{
    /// <summary>A refusal of it.</summary>
    public ImportProblem Refused(string wrong, string allowed) => new(Place, wrong, allowed, Text);
}
