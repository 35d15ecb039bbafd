using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>A threshold that a rule reads. No number stands in a rule itself.</summary>
/// <param name="Id">The permanent name, for instance "ladder.lag-closed".</param>
/// <param name="Title">What it bounds, in words a clinician uses.</param>
/// <param name="Value">The threshold in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit symbol; "1" for a plain number.</param>
/// <param name="Source">Where it comes from and how well it is founded.</param>
public sealed record Limit(string Id, string Title, double Value, string Unit, Source Source)
{
    /// <summary>The threshold with its unit: "5 deg", "40 %", "10" for a plain number.</summary>
    public string Text => Unit == "1" ? Number.Text(Value) : $"{Number.Text(Value)} {Unit}";
}
