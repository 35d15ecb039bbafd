using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class InMemoryPlanStoreTests : PlanStoreContract
{
    protected override IPlanStore Store { get; } = new InMemoryPlanStore(Sample.Fields);

    protected override IPlanStore Another() => new InMemoryPlanStore(Sample.Fields);
}
