using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads what is asked of the plan: regimen, weeks, first day.</summary>
internal static class PlanFields
{
    /// <summary>The case with what was asked; unchanged when nothing was.</summary>
    public static Case Read(Fields top, Case read, CaseReading reading)
    {
        if (top.Map("plan", Need.Optional) is not { } fields)
        {
            return read;
        }

        DaySpan plan = reading.AfterOperation((7 * PostOpWeek.Longest) - 1) with
        {
            Early = "The plan cannot begin before the operation: there is no week 0.",
            Late = "The plan begins too late.",
        };
        read = read with
        {
            Regimen = fields.OneOf("regimen", Need.Optional, reading.Library.Regimens.Keys),
            Weeks = fields.Whole("weeks", Need.Optional, new NumberRange(1, PostOpWeek.Longest, "weeks")),
            PlanFrom = fields.Date("from", Need.Optional, plan),
        };
        fields.Done();
        return read;
    }
}
