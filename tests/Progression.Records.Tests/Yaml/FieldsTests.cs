using System.Text;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Yaml;

public sealed class FieldsTests
{
    private static readonly NumberRange Degrees = new(-15, 160, "deg");

    private static (T Value, FileProblem? Problem) Read<T>(string text, Func<Fields, T> read)
    {
        FileProblems problems = new("some.yaml");
        YamlDocument document = YamlDocument.Read("some.yaml", Encoding.UTF8.GetBytes(text));
        T value = read(new Fields(document.Root!, "", problems));
        return (value, problems.InOrder().SingleOrDefault());
    }

    [Theory]
    [InlineData("x: -15", -15)]
    [InlineData("x: 160", 160)]
    [InlineData("x: 7.5", 7.5)]
    public void A_number_in_range_is_read(string text, double expected) =>
        Assert.Equal((expected, null), Read(text, fields => fields.Decimal("x", Need.Required, Degrees)));

    [Theory]
    [InlineData("x: -15.1", "out of range")]
    [InlineData("x: 160.1", "out of range")]
    [InlineData("x: 900", "out of range")]
    [InlineData("x: 1e3", "not a number")]
    [InlineData("x: 0x10", "not a number")]
    [InlineData("x: NaN", "not a number")]
    [InlineData("x: .inf", "not a number")]
    [InlineData("x: +5", "not a number")]
    [InlineData("x: 99999999999999999999", "not a number")]
    [InlineData("x: 7,5", "point, not a comma")]
    [InlineData("x: seven", "not a number")]
    public void Any_other_number_is_refused_with_range_and_unit(string text, string wrong)
    {
        (double? value, FileProblem? problem) = Read(text, fields => fields.Decimal("x", Need.Required, Degrees));

        Assert.Null(value);
        Assert.Contains(wrong, problem!.Wrong, StringComparison.Ordinal);
        Assert.Equal("a number from -15 to 160 deg", problem.Allowed);
        Assert.Equal(text[3..], problem.Found);
    }

    [Fact]
    public void A_fraction_is_refused_where_a_whole_number_is_asked_for() =>
        Assert.Contains("whole number", Read("x: 2.5", fields => fields.Whole("x", Need.Required, Degrees)).Problem!.Wrong, StringComparison.Ordinal);

    [Theory]
    [InlineData("2026-02-30")]
    [InlineData("2026-2-3")]
    [InlineData("03.02.2026")]
    [InlineData("2026-02-03T10:00")]
    public void A_day_that_is_not_one_is_refused(string day)
    {
        (DateOnly? value, FileProblem? problem) = Read("x: " + day, fields => fields.Date("x", Need.Required));

        Assert.Null(value);
        Assert.Equal((1, "x", day), (problem!.Line, problem.Field, problem.Found));
    }

    [Fact]
    public void A_day_is_read() => Assert.Equal((new DateOnly(2028, 2, 29), null), Read("x: 2028-02-29", fields => fields.Date("x", Need.Required)));

    [Theory]
    [InlineData("x: yes", true)]
    [InlineData("x: no", false)]
    public void Yes_and_no_are_read(string text, bool expected) => Assert.Equal((expected, null), Read(text, fields => fields.YesNo("x", Need.Required)));

    [Theory]
    [InlineData("x: yse", "Did you mean \"yes\"?")]
    [InlineData("x: true", "none of the known words.")]
    public void Anything_else_than_yes_or_no_is_refused(string text, string wrong) =>
        Assert.EndsWith(wrong, Read(text, fields => fields.YesNo("x", Need.Required)).Problem!.Wrong, StringComparison.Ordinal);

    [Fact]
    public void A_word_of_an_enum_is_read_with_spaces() =>
        Assert.Equal((WeightBearing.AsTolerated, null), Read("x: as tolerated", fields => fields.OneOf<WeightBearing>("x", Need.Required)));

    [Fact]
    public void The_nearest_word_of_an_enum_is_offered()
    {
        FileProblem problem = Read("x: partail", fields => fields.OneOf<WeightBearing>("x", Need.Required)).Problem!;

        Assert.Equal("This is none of the known words. Did you mean \"partial\"?", problem.Wrong);
        Assert.Equal("none, touch, partial, as tolerated, full", problem.Allowed);
    }

    [Theory]
    [InlineData("y: 1", 1)]
    [InlineData("y: 1\nx:", 2)]
    [InlineData("y: 1\nx: ~", 2)]
    public void A_blank_field_is_missing_not_zero(string text, int line)
    {
        FileProblem problem = Read(text, fields => fields.Decimal("x", Need.Required, Degrees)).Problem!;

        Assert.Equal((line, "x", ""), (problem.Line, problem.Field, problem.Found));
        Assert.Equal((null, null), Read(text, fields => fields.Decimal("x", Need.Optional, Degrees)));
    }

    [Theory]
    [InlineData("x: ''")]
    [InlineData("x: '   '")]
    [InlineData("x: 123456")]
    [InlineData("x: |\n  a\n  b")]
    public void A_text_that_is_empty_too_long_or_of_several_lines_is_refused(string text) =>
        Assert.Contains("one line of 1 to 5 characters", Read(text, fields => fields.Text("x", Need.Required, 5)).Problem!.Allowed, StringComparison.Ordinal);

    [Fact]
    public void An_unknown_field_is_refused_with_the_nearest_known_one()
    {
        FileProblem problem = Read("side: left\nweigth: 3\n", fields =>
        {
            fields.Text("side", Need.Required);
            fields.Text("weight", Need.Optional);
            fields.Done();
            return fields;
        }).Problem!;

        Assert.Equal((2, "weigth", "side, weight"), (problem.Line, problem.Field, problem.Allowed));
        Assert.Contains("Did you mean \"weight\"?", problem.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_and_maps_where_a_value_belongs_are_refused_and_the_reverse()
    {
        Assert.Equal("a list", Read("x: [1]", fields => fields.Text("x", Need.Required)).Problem!.Found);
        Assert.Equal("5", Read("x: 5", fields => fields.Map("x", Need.Required)).Problem!.Found);
        Assert.Equal("5", Read("x: 5", fields => fields.Maps("x", Need.Required)).Problem!.Found);
        Assert.Equal("x[2]", Read("x: [{a: 1}, 5]", fields => fields.Maps("x", Need.Required)).Problem!.Field);
    }

    [Fact]
    public void A_value_with_its_own_way_of_writing_is_told_with_its_line()
    {
        (string? value, FileProblem? problem) = Read(
            "a: 1\nx: 5", fields => fields.As("x", Need.Required, (field, text) => Entered<string>.Bad(new Problem(field, "No.", "kg", text))));

        Assert.Null(value);
        Assert.Equal(new FileProblem("some.yaml", 2, "x", "No.", "kg", "5"), problem);
    }

    [Fact]
    public void Problems_come_in_the_order_of_the_file()
    {
        FileProblems problems = new("some.yaml");
        Fields fields = new(YamlDocument.Read("some.yaml", "a: x\nb: y\n"u8.ToArray()).Root!, "", problems);
        fields.Decimal("b", Need.Required, Degrees);
        fields.Decimal("a", Need.Required, Degrees);

        Assert.Equal(["a", "b"], problems.InOrder().Select(problem => problem.Field));
    }

    [Fact]
    public void A_problem_is_one_line_with_all_six_parts() =>
        Assert.Equal(
            "c.yaml:3: operation.date: Wrong. Allowed: a day. Found: \"x\".",
            new FileProblem("c.yaml", 3, "operation.date", "Wrong.", "a day", "x").ToString());
}
