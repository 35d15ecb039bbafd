using System.Globalization;

namespace Progression.Exchange.Import;

/// <summary>Where something stood in a file of another program, so that the person finds it again.</summary>
/// <param name="Order">Its place from the top of the file: the row or entry, from 1; 0 for the file as a whole.</param>
/// <param name="At">The same in words: "row 7", "entry 3"; empty for the file as a whole.</param>
/// <param name="Field">The column or field; empty where none is meant.</param>
public sealed record ImportPlace(int Order, string At, string Field)
{
    /// <summary>The file as a whole.</summary>
    public static ImportPlace File { get; } = new(0, "", "");

    /// <summary>A row as a spreadsheet counts it: the header is row 1.</summary>
    /// <param name="row">The row, from 1.</param>
    /// <param name="column">The head of the column; empty for the whole row.</param>
    public static ImportPlace Row(int row, string column = "") => new(row, "row " + row.ToString(CultureInfo.InvariantCulture), column);

    /// <summary>An entry of a bundle.</summary>
    /// <param name="entry">The entry, from 1.</param>
    /// <param name="path">The field in it; empty for the whole entry.</param>
    public static ImportPlace Entry(int entry, string path = "") => new(entry, "entry " + entry.ToString(CultureInfo.InvariantCulture), path);

    /// <summary>"row 7, Knee flexion".</summary>
    public override string ToString() => At.Length == 0 ? Field : Field.Length == 0 ? At : $"{At}, {Field}";
}
