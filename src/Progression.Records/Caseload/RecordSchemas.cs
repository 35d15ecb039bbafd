using Progression.Records.Cases;
using Progression.Records.Forecasts;
using Progression.Records.Plans;
using Progression.Records.Reviews;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>The forms of bodies this program writes, and how older ones are brought forward. None is older yet.</summary>
public static class RecordSchemas
{
    /// <summary>The table, for <see cref="StoreOptions.Schemas"/>.</summary>
    public static BodySchemas Table { get; } = BodySchemas.None with { Current = [CaseJson.Schema, PlanJson.Schema, ForecastJson.Schema, ReviewJson.Schema] };
}
