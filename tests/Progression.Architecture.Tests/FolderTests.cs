namespace Progression.Architecture.Tests;

/// <summary>Which folder of a project may name which other folder. A folder that is not in a table has no place yet.</summary>
public sealed class FolderTests
{
    /// <summary>The seam: asks the shell whether there is a terminal, so that no command has to.</summary>
    private const string Seam = "src/Progression.App/Commands/CliEnvironment.cs";

    /// <summary>Read downwards: each folder knows only folders above it, but for Findings and Plans, which know each other.</summary>
    public static TheoryData<string, string> Core => new()
    {
        { "Quantities", "" },
        { "Clinic", "" },
        { "Statistics", "Quantities" },
        { "Library", "Quantities" },
        { "Entry", "Quantities Library" },
        { "People", "Quantities Library" },
        { "Findings", "Library Plans" },
        { "Plans", "Quantities Library Entry People Findings" },
        { "Measures", "Quantities Statistics Library Entry People Findings" },
        { "Stimulation", "Quantities Library Entry Findings" },
        { "Doses", "Quantities Library People Plans" },
        { "Adherence", "Quantities Library People Plans Doses" },
        { "Rules", "Quantities Library People Measures Findings Plans" },
        { "Drafting", "Quantities Library Entry People Findings Plans Doses Measures Rules" },
        { "Forecasts", "Quantities Statistics Library People Measures Findings Plans Rules" },
        { "Reassessing", "Quantities Library Entry People Measures Findings Plans Doses Rules Drafting Forecasts" },
        { "Checks", "Quantities Library People Measures Findings Plans Doses Rules Forecasts" },
        { "Caseload", "Quantities Library People Measures Rules" },
        { "Reviews", "Clinic Findings Plans" },
        { "Outcomes", "Quantities Statistics Library People Measures Plans Doses Adherence Rules Forecasts" },
        { "Plots", "Outcomes Adherence Statistics Quantities Library People Plans Measures Doses Forecasts" },
        { "Documents", "Entry" },
        { "Sheets", "Quantities Library People Plans Documents" },
        { "Notes", "Quantities Library People Findings Plans Measures Doses Rules Forecasts Checks Caseload Reviews Adherence Documents" },
    };

    public static TheoryData<string, string> Records => new()
    {
        { "Yaml", "" },
        { "Json", "Yaml" },
        { "Storage", "Json" },
        { "Audit", "Yaml Json Storage Reviews" },
        { "Library", "Yaml" },
        { "Words", "Yaml" },
        { "Codes", "Yaml Library" },
        { "Plans", "Yaml Json" },
        { "Cases", "Yaml Json" },
        { "Forecasts", "Yaml Json" },
        { "Reviews", "Yaml Json" },
        { "Clinic", "Yaml Storage" },
        { "Caseload", "Json Cases Plans Forecasts Storage Audit Reviews" },
        { "Settings", "Yaml" },
    };

    public static TheoryData<string, string> Exchange => new()
    {
        { "Pdf", "" },
        { "Plots", "" },
        { "Fhir", "Import" },
        { "Csv", "Import" },
        { "Calendar", "" },
        { "Import", "" },
    };

    public static TheoryData<string, string> App => new()
    {
        { "Pictures", "" },
        { "Stores", "" },
        { "Actions", "Pictures" },
        { "Grid", "Pictures Actions" },
        { "Forms", "Pictures Actions" },
        { "Assess", "Pictures Actions Forms" },
        { "Flags", "Pictures Actions Forms" },
        { "Logs", "Pictures Actions Forms" },
        { "Caseload", "Stores" },
        { "Start", "Pictures Actions Caseload" },
        { "Intake", "Pictures Actions Forms Assess" },
        { "Shell", "Pictures Actions" },
        { "Compare", "Pictures Actions" },
        { "Chart", "Pictures Actions" },
        { "Propose", "Pictures Actions" },
        { "Trying", "Pictures Actions Forms Assess Grid" },
        { "Plain", "Pictures Actions" },
        { "Browse", "Pictures Actions" },
        { "Settings", "Pictures Actions" },
        { "Reviews", "Pictures Actions" },
        { "Figures", "Pictures Actions Papers" },
        { "Papers", "Pictures Actions" },
        { "Imports", "Pictures Actions" },
        { "Screens", "Figures Papers Imports Reviews Pictures Stores Actions Forms Assess Intake Flags Logs Compare Chart Propose Trying Grid Caseload Start Shell Plain Browse Settings" },
        { "Commands", "Figures Papers Pictures Stores Grid Caseload Reviews" },
    };

    [Theory]
    [MemberData(nameof(Core))]
    public void Core_folders_keep_their_order(string folder, string may) => Check("Progression.Core", Core, (folder, may));

    [Theory]
    [MemberData(nameof(Records))]
    public void Records_folders_keep_their_order(string folder, string may) => Check("Progression.Records", Records, (folder, may));

    [Theory]
    [MemberData(nameof(Exchange))]
    public void Exchange_folders_keep_their_order(string folder, string may) => Check("Progression.Exchange", Exchange, (folder, may));

    [Theory]
    [MemberData(nameof(App))]
    public void App_folders_keep_their_order(string folder, string may) => Check("Progression.App", App, (folder, may));

    [Theory]
    [InlineData("Progression.Core")]
    [InlineData("Progression.Records")]
    [InlineData("Progression.Exchange")]
    [InlineData("Progression.App")]
    public void Every_folder_has_its_line_in_a_table(string project)
    {
        TheoryData<string, string> table = project switch { "Progression.Core" => Core, "Progression.Records" => Records, "Progression.Exchange" => Exchange, _ => App };
        IEnumerable<string> folders = Checkout.Under($"src/{project}").Select(file => file.FolderIn($"src/{project}")).Where(folder => folder != "");
        Assert.All(folders.Distinct(), folder => Assert.Contains(folder, table.Select(row => row.Data.Item1)));
    }

    [Fact]
    public void The_store_knows_nothing_clinical() =>
        Assert.All(Checkout.Under("src/Progression.Records/Storage"), file => Assert.DoesNotContain("Progression.Core", file.Code, StringComparison.Ordinal));

    [Theory]
    [InlineData("LiteDB", "src/Progression.Records/Storage tests/Progression.Records.Tests/Storage tests/Progression.StoreDriver tests/Progression.Faults.Tests")]
    [InlineData("LiteEngine", "src/Progression.Records/Storage tests/Progression.Records.Tests/Storage tests/Progression.StoreDriver")]
    [InlineData("YamlDotNet", "src/Progression.Records/Yaml tests/Progression.Records.Tests")]
    [InlineData("Terminal.Gui", "src/Progression.App/Shell src/Progression.App/Screens tests/Progression.App.Tests")]
    [InlineData("PdfPig", "src/Progression.Exchange/Pdf tests/Progression.Exchange.Tests")]
    [InlineData("ScottPlot", "src/Progression.Exchange/Plots")]
    [InlineData("Ical", "src/Progression.Exchange/Calendar tests/Progression.Exchange.Tests")]
    [InlineData("Hl7.Fhir", "tests/Progression.Exchange.Tests/Fhir")]
    [InlineData("System.CommandLine", "src/Progression.App/Commands tests/Progression.App.Tests/Commands")]
    public void A_package_is_named_only_where_it_belongs(string package, string folders) =>
        Assert.All(
            Checkout.Under("src", "seed-demo", "tests").Except(Checkout.Under([.. folders.Split(' '), "tests/Progression.Architecture.Tests"])),
            file => Assert.False(file.Mentions(package), file.Path));

    private static void Check(string project, TheoryData<string, string> table, (string Folder, string May) rule)
    {
        IEnumerable<string> others = table.Select(row => row.Data.Item1).Except([rule.Folder, .. rule.May.Split(' ')]);
        IEnumerable<string> broken =
            from file in Checkout.Under($"src/{project}/{rule.Folder}")
            from other in others
            where (file.Path, other) != (Seam, "Shell")
            where file.Mentions($"{project}.{other}")
            select $"{file.Path} names {other}";
        Assert.Empty(broken);
    }
}
