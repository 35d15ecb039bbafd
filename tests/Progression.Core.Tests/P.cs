namespace Progression.Core.Tests;

public sealed class PTests
{
    [Fact]
    public void Runs() => Assert.True(true);
}
