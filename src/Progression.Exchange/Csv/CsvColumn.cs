namespace Progression.Exchange.Csv;

/// <summary>What a column of a file holds.</summary>
/// <param name="At">Its place, from 0.</param>
/// <param name="Head">Its head as it stands in the file.</param>
/// <param name="Field">What it is, by our own name.</param>
/// <param name="Unit">The unit that its head or the person says; null for none.</param>
internal sealed record CsvColumn(int At, string Head, string Field, string? Unit);
