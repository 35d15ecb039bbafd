using System.Collections.Immutable;
using System.Reflection;
using System.Text.RegularExpressions;
using Progression.Core.Library;
using Progression.Core.Rules;
using Progression.Records.Library;

namespace Progression.Architecture.Tests;

/// <summary>A rule can be found, cited and judged; a limit is used; an id means one thing.</summary>
public sealed partial class RuleTests
{
    private static readonly ImmutableArray<LadderRule> Rules =
    [
        .. typeof(LadderRule).Assembly.GetTypes()
            .SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(property => property.PropertyType == typeof(LadderRule))
            .Select(property => (LadderRule)property.GetValue(null)!),
    ];

    [Fact]
    public void Every_ladder_rule_is_read() => Assert.Equal(Rules.Select(rule => rule.Id).Order(StringComparer.Ordinal), LadderRules.All.Select(rule => rule.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_ladder_rule_can_be_cited_and_judged()
    {
        Assert.NotEmpty(Rules);
        Assert.Equal(Rules.Length, Rules.Select(rule => rule.Id).Distinct().Count());
        Assert.Equal(Rules.Length, Rules.Select(rule => rule.Title).Distinct().Count());
        Assert.All(Rules, rule =>
        {
            Assert.All([rule.Title, rule.Source.Text, rule.KnownLimits, rule.Advice], text => Assert.False(string.IsNullOrWhiteSpace(text), rule.Id));
            Assert.NotEmpty(rule.When);
            Assert.NotEmpty(rule.On);
        });
    }

    [Fact]
    public void An_id_of_a_rule_stands_in_one_file_only()
    {
        ILookup<string, string> files = Ids("src/Progression.Core");
        Assert.True(files.Count > LadderRules.All.Length);
        Assert.All(files, id => Assert.Single(id));
        Assert.All(LadderRules.All, rule => Assert.Contains(rule.Id, files.Select(id => id.Key)));
    }

    [Fact]
    public void Every_rule_that_can_find_something_is_named_in_a_test()
    {
        string tests = string.Concat(Checkout.Under("tests/Progression.Core.Tests").Select(file => file.Code));
        Assert.All(Ids("src/Progression.Core/Rules", "src/Progression.Core/Checks").Select(id => id.Key), id =>
            Assert.Matches($"\"{id}\"|\\bLadderRules\\.{Property(id)}\\b", tests));
    }

    [Fact]
    public void What_is_assigned_as_a_rule_is_an_id() =>
        Assert.All(
            Checkout.Under("src").SelectMany(file => Assigned().Matches(file.Code)),
            match => Assert.Matches("^[A-Z]+(-[A-Z0-9]+)*$", match.Groups[1].Value));

    [Fact]
    public void Every_limit_is_read_by_a_rule() =>
        Assert.All(LimitNames(), limit => Assert.Contains(
            Checkout.Under("src/Progression.Core").Where(file => !file.Path.EndsWith("/LimitIds.cs", StringComparison.Ordinal)),
            file => Regex.IsMatch(file.Code, $@"\bLimitIds\.{limit.Name}\b")));

    [Fact]
    public void What_is_shipped_is_what_is_needed()
    {
        IEnumerable<string> ids = LimitNames().Select(limit => limit.Id).Order(StringComparer.Ordinal);
        Assert.Equal(ids, LimitIds.Units.Keys.Concat(LimitIds.OptionalUnits.Keys).Order(StringComparer.Ordinal));
        Assert.Equal(LimitIds.Units.Keys, LibraryReader.Default().Limits.Keys);
    }

    /// <summary>The files in which each id stands; the answer to "why" repeats the ids of the checks it explains, so it is left out.</summary>
    private static ILookup<string, string> Ids(params string[] folders) => Checkout.Under(folders)
        .Where(file => !file.Path.EndsWith("Checks/Why.cs", StringComparison.Ordinal))
        .SelectMany(file => RuleId().Matches(file.Code).Select(match => (Id: match.Groups[1].Value, file.Path)))
        .Distinct()
        .ToLookup(pair => pair.Id, pair => pair.Path);

    /// <summary>The property that holds a ladder rule; "-" for an id that is not one of theirs.</summary>
    private static string Property(string id) =>
        typeof(LadderRules).GetProperties().FirstOrDefault(property => property.GetValue(null) is LadderRule rule && rule.Id == id)?.Name ?? "-";

    private static IEnumerable<(string Name, string Id)> LimitNames() =>
        typeof(LimitIds).GetFields().Where(field => field.IsLiteral).Select(field => (field.Name, (string)field.GetRawConstantValue()!));

    [GeneratedRegex("\"([A-Z]{2,}(?:-[A-Z0-9]+)+)\"")]
    private static partial Regex RuleId();

    [GeneratedRegex("\\bRule = \"([^\"]*)\"")]
    private static partial Regex Assigned();
}
