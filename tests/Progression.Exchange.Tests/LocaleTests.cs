namespace Progression.Exchange.Tests;

/// <summary>The suites of Core, Records and Exchange are run once more where a comma stands before decimals; this tells that such a run is what it says.</summary>
public sealed class LocaleTests
{
    [Fact]
    public void A_run_that_says_it_has_commas_has_them() =>
        Assert.Equal(Environment.GetEnvironmentVariable("PROGRESSION_TESTS_DECIMALS") == "comma" ? "1,5" : "1.5", FormattableString.CurrentCulture($"{1.5}"));
}
