using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads the operation and what the surgeon has bounded.</summary>
internal static class OperationFields
{
    /// <summary>The operation; null with problems.</summary>
    public static Operation? Read(Fields top, DateOnly? born, DateOnly today)
    {
        if (top.Map("operation", Need.Required) is not { } fields)
        {
            return null;
        }

        DaySpan span = new(born > CaseReading.Earliest ? born.Value : CaseReading.Earliest, today)
        {
            Early = born is null ? "The operation lies too long ago." : "The operation lies before the birth or too long ago.",
            Late = "The operation lies in the future.",
        };
        DateOnly? date = fields.Date("date", Need.Required, span);
        Side? side = fields.OneOf<Side>("side", Need.Required);
        string? procedure = fields.Text("procedure", Need.Required);
        fields.Done();
        return date is DateOnly day && side is Side knee && procedure is not null ? new Operation(day, knee, procedure) : null;
    }

    /// <summary>The surgeon's bounds; none stated when the map is missing.</summary>
    public static SurgeonLimits Surgeon(Fields top, CaseReading reading)
    {
        if (top.Map("surgeon", Need.Optional) is not { } fields)
        {
            return SurgeonLimits.NotStated;
        }

        DaySpan year = reading.AfterOperation(365) with
        {
            Early = "The day lies before the operation.",
            Late = "The day lies more than a year after the operation.",
        };
        SurgeonLimits limits = new()
        {
            FlexionAtMost = fields.As("flexion_at_most", Need.Optional, QuantityText.Angle.Within(0, 160).Read),
            NoResistanceBefore = fields.Date("no_resistance_before", Need.Optional, year),
            Text = fields.Text("text", Need.Optional, 300),
        };
        fields.Done();
        return limits;
    }
}
