using Progression.Core.Entry;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>A number whose unit is known only from the library itself.</summary>
/// <param name="Value">The number in that unit.</param>
internal sealed record Amount(double Value)
{
    /// <summary>How such a number is written: with its unit, or bare where the unit is "1".</summary>
    public static QuantityForm<Amount> Form(string name, string unit, NumberRange range) => new()
    {
        Name = name,
        Unit = unit == "1" ? "" : unit,
        Units = [new UnitWord(unit == "1" ? "" : unit, 1, IsShown: true)],
        Least = (decimal)range.Least,
        Most = (decimal)range.Most,
        Make = value => new Amount(value),
    };
}
