using System.Reflection;
using System.Xml.Linq;

namespace Progression.Architecture.Tests;

/// <summary>References go down only: App, Exchange, Records, Core; the demo stands beside the App.</summary>
public sealed class ProjectTests
{
    [Theory]
    [InlineData("src/Progression.Core/Progression.Core.csproj", "", "")]
    [InlineData("src/Progression.Records/Progression.Records.csproj", "LiteDB YamlDotNet", "Progression.Core")]
    [InlineData("src/Progression.Exchange/Progression.Exchange.csproj", "Ical.Net PdfPig ScottPlot SkiaSharp.NativeAssets.Linux.NoDependencies", "Progression.Records")]
    [InlineData("seed-demo/Progression.SeedDemo.csproj", "Bogus", "Progression.Records")]
    [InlineData("src/Progression.App/Progression.App.csproj", "Humanizer System.CommandLine Terminal.Gui", "Progression.Exchange Progression.Records Progression.SeedDemo")]
    public void A_project_references_what_is_written_here_and_nothing_else(string project, string packages, string projects)
    {
        Assert.Equal(packages, string.Join(' ', Of(project, "PackageReference").Order(StringComparer.Ordinal)));
        Assert.Equal(projects, string.Join(' ', Of(project, "ProjectReference").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("Progression.Core", "System.")]
    [InlineData("Progression.Records", "System. Microsoft.Win32.Primitives Progression.Core LiteDB YamlDotNet")]
    [InlineData("Progression.Exchange", "System. Progression.Core Progression.Records Ical.Net NodaTime UglyToad.PdfPig ScottPlot SkiaSharp")]
    [InlineData("Progression.SeedDemo", "System. Progression.Core Progression.Records Bogus")]
    [InlineData("progression", "System. Progression.Core Progression.Exchange Progression.Records Progression.SeedDemo Humanizer Terminal.Gui")]
    public void An_assembly_reaches_only_what_its_project_may(string assembly, string allowed) =>
        Assert.All(Assembly.Load(assembly).GetReferencedAssemblies(), reference =>
            Assert.True(allowed.Split(' ').Any(start => reference.Name!.StartsWith(start, StringComparison.Ordinal)), reference.Name));

    [Theory]
    [InlineData("src/Progression.Records/Progression.Records.csproj")]
    [InlineData("src/Progression.Exchange/Progression.Exchange.csproj")]
    public void The_engine_of_the_store_and_the_libraries_of_formats_do_not_leak_upwards(string project) =>
        Assert.All(
            Elements(project, "PackageReference"),
            package => Assert.Equal("compile", package.Attribute("PrivateAssets")?.Value));

    [Fact]
    public void Made_up_data_is_made_only_for_the_demo_and_the_tests() =>
        Assert.All(Checkout.Under("src"), file => Assert.False(file.Mentions("Bogus"), file.Path));

    private static IEnumerable<string> Of(string project, string element) => Elements(project, element).Select(found => found.Attribute("Include")!.Value);

    private static IEnumerable<XElement> Elements(string project, string element) => XDocument.Parse(Checkout.Read(project)).Descendants(element);
}
