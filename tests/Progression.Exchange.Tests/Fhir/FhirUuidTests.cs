using Progression.Exchange.Fhir;

namespace Progression.Exchange.Tests.Fhir;

public sealed class FhirUuidTests
{
    /// <summary>RFC 9562, appendix B.2: "www.example.com" in the name space of DNS.</summary>
    [Fact]
    public void A_name_is_made_as_the_standard_shows() =>
        Assert.Equal("5c146b14-3c52-8afd-938a-375d0df1fbf6", FhirUuid.Of(new Guid("6ba7b810-9dad-11d1-80b4-00c04fd430c8"), "www.example.com").ToString());

    [Fact]
    public void The_same_parts_give_the_same_name_and_other_parts_another()
    {
        Assert.Equal(FhirUuid.Urn("plan", "A-1", "3"), FhirUuid.Urn("plan", "A-1", "3"));
        Assert.NotEqual(FhirUuid.Urn("plan", "A-1", "3"), FhirUuid.Urn("plan", "A-1", "4"));
    }
}
