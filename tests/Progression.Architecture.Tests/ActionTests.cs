using System.Collections.Immutable;
using System.Reflection;
using Progression.App.Actions;
using Progression.App.Plain;

namespace Progression.Architecture.Tests;

/// <summary>Every table of keys of every screen, found by reflection.</summary>
public sealed class ActionTests
{
    private static readonly ImmutableArray<PropertyInfo> Tables =
    [
        .. typeof(ActionTable<>).Assembly.GetTypes()
            .Where(type => !type.ContainsGenericParameters)
            .SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(property => property.PropertyType.IsGenericType && property.PropertyType.GetGenericTypeDefinition() == typeof(ActionTable<>)),
    ];

    [Fact]
    public void The_grid_has_a_table() => Assert.Contains(Tables, table => table.DeclaringType == typeof(App.Grid.GridActions));

    [Fact]
    public void A_key_means_one_thing_in_a_mode() =>
        Assert.All(Tables, table => Assert.All(Rows(table).SelectMany(row => row.Keys.Select(key => (row.Mode, key))).CountBy(key => key), key => Assert.Equal(1, key.Value)));

    [Fact]
    public void Every_action_can_be_shown_and_looked_up() =>
        Assert.All(Tables.SelectMany(Rows), row =>
        {
            Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", row.Id);
            Assert.NotEmpty(row.Keys);
            Assert.All([row.Mode, row.Group, row.Help], text => Assert.False(string.IsNullOrWhiteSpace(text), row.Id));
            Assert.Equal(row.HintRank is null, row.Hint.Length == 0);
        });

    /// <summary>A mode without the key ? takes text. There help is F1; the finder itself is the one screen without a finder.</summary>
    [Fact]
    public void Every_mode_has_help_the_finder_a_way_out_and_enough_hints() =>
        Assert.All(Tables.SelectMany(table => Rows(table).GroupBy(row => $"{table.DeclaringType!.Name} {row.Mode}")), mode =>
        {
            Row help = Assert.Single(mode, row => row.Keys.Contains("F1"));
            Assert.Equal(1, help.HintRank);
            Assert.True(mode.Count(row => row.HintRank is not null) >= 4, mode.Key);
            Assert.Contains(mode, row => row.IsBack);
            if (!mode.Key.StartsWith(nameof(ActionFinder), StringComparison.Ordinal))
            {
                Row find = Assert.Single(mode, row => row.Keys.Contains("Ctrl+P"));
                Assert.Equal(help.Keys.Contains("?"), find.Keys.Contains(":"));
            }

            if (!help.Keys.Contains("?"))
            {
                // By these two keys an answer gets into a field in line mode.
                Assert.All([PlainKeys.Empty, PlainKeys.Take], key => Assert.Contains(mode, row => row.Keys.Contains(key)));
            }
        });

    /// <summary>A screen that leaves out where the person is, what was told or what is said of it falls back on nothing, or on its picture.</summary>
    [Fact]
    public void Every_screen_says_where_it_is_and_has_words_for_line_mode()
    {
        PropertyInfo[] screens =
        [
            .. typeof(ScreenDefinition<>).Assembly.GetTypes().Where(type => !type.ContainsGenericParameters).SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public))
                .Where(property => property.PropertyType.IsGenericType && property.PropertyType.GetGenericTypeDefinition() == typeof(ScreenDefinition<>)),
        ];
        Assert.NotEmpty(screens);
        Assert.All(screens, screen => typeof(ActionTests).GetMethod(nameof(Speaks), BindingFlags.Static | BindingFlags.NonPublic)!
            .MakeGenericMethod(screen.PropertyType.GenericTypeArguments).Invoke(null, [screen.GetValue(null)]));
    }

    private static void Speaks<TState>(ScreenDefinition<TState> screen)
        where TState : class
    {
        ScreenDefinition<TState> silent = new() { Actions = screen.Actions, Draw = screen.Draw, Say = screen.Say };
        Assert.NotEqual(silent.Where, screen.Where);
        Assert.NotEqual(silent.Told, screen.Told);
        Assert.NotEqual(silent.Aloud.Here, screen.Aloud.Here);
        Assert.NotEqual(silent.Aloud.Read, screen.Aloud.Read);
    }

    private static IEnumerable<Row> Rows(PropertyInfo table) =>
        ((IEnumerable<Row>)typeof(ActionTests).GetMethod(nameof(RowsOf), BindingFlags.Static | BindingFlags.NonPublic)!
            .MakeGenericMethod(table.PropertyType.GenericTypeArguments).Invoke(null, [table.GetValue(null)])!);

    private static IEnumerable<Row> RowsOf<TState>(ActionTable<TState> table) =>
        table.All.Select(action => new Row(action.Id, action.Mode, action.Keys, action.Group, action.Help, action.Hint, action.HintRank, action.IsBack));

    private sealed record Row(string Id, string Mode, ImmutableArray<string> Keys, string Group, string Help, string Hint, int? HintRank, bool IsBack);
}
