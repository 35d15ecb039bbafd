using Progression.Core.Entry;

namespace Progression.Core.Tests.Entry;

public sealed class QuantityTextTests
{
    // Unit relations: SI brochure, 9th edition (minute 60 s, hour 3600 s, milli 1e-3, micro 1e-6, kilo 1e3, centi 1e-2).
    [Theory]
    [InlineData("15s", 15)]
    [InlineData("15 s", 15)]
    [InlineData(" 15  s ", 15)]
    [InlineData("2 min", 120)]
    [InlineData("1.5 h", 5400)]
    [InlineData("500 ms", 0.5)]
    [InlineData("0 s", 0)]
    [InlineData("604800 s", 604800)]
    [InlineData("15 SEC", 15)]
    [InlineData("15\u00A0s", 15)]
    public void Reads_durations(string text, double seconds) =>
        Assert.Equal(seconds, QuantityText.Duration.Read("--on", text).Value?.Seconds);

    [Theory]
    [InlineData("250us", 250)]
    [InlineData("250 \u00B5s", 250)]
    [InlineData("250 \u03BCs", 250)]
    [InlineData("0.25 ms", 250)]
    [InlineData("1ms", 1000)]
    public void Reads_pulse_widths(string text, double microseconds) =>
        Assert.Equal(microseconds, QuantityText.PulseWidth.Read("--width", text).Value?.Microseconds);

    [Theory]
    [InlineData("50", 50)]
    [InlineData("50 pps", 50)]
    [InlineData("50bps", 50)]
    [InlineData("50 Hz", 50)]
    [InlineData("12.5/s", 12.5)]
    public void Reads_pulse_rates_with_or_without_a_unit(string text, double hertz) =>
        Assert.Equal(hertz, QuantityText.PulseRate.Read("--pps", text).Value?.Hertz);

    [Fact]
    public void Reads_every_other_quantity()
    {
        Assert.Equal(2500, QuantityText.Carrier.Read("f", "2500Hz").Value?.Hertz);
        Assert.Equal(2500, QuantityText.Carrier.Read("f", "2.5 kHz").Value?.Hertz);
        Assert.Equal(60, QuantityText.Current.Read("f", "60mA").Value?.Milliamperes);
        Assert.Equal(24, QuantityText.Torque.Read("f", "24Nm").Value?.NewtonMetres);
        Assert.Equal(24, QuantityText.Torque.Read("f", "24 N\u00B7m").Value?.NewtonMetres);
        Assert.Equal(24, QuantityText.Torque.Read("f", "24 N m").Value?.NewtonMetres);
        Assert.Equal(180, QuantityText.Force.Read("f", "180 N").Value?.Newtons);
        Assert.Equal(82, QuantityText.Mass.Read("f", "82 kg").Value?.Kilograms);
        Assert.Equal(7.6, QuantityText.Length.Read("f", "76 mm").Value?.Centimetres);
        Assert.Equal(40, QuantityText.Length.Read("f", "0.4 m").Value?.Centimetres);
        Assert.Equal(50, QuantityText.Percentage.Read("f", "50%").Value?.Percent);
        Assert.Equal(95, QuantityText.Angle.Read("f", "95\u00B0").Value?.Degrees);
        Assert.Equal(-3, QuantityText.Angle.Read("f", "-3 deg").Value?.Degrees);
    }

    [Fact]
    public void Says_field_fault_permitted_range_with_unit_and_what_was_found()
    {
        Problem problem = Assert.Single(QuantityText.Duration.Read("--on", "15").Problems);

        Assert.Equal("--on: The duration has no unit. Allowed: a number with s, min, h or ms, from 0 to 604800 s. Found: \"15\".", problem.ToString());
    }

    [Theory]
    [InlineData("15 mA", "has a unit that does not fit")]
    [InlineData("7,5 s", "has a decimal comma; write a point")]
    [InlineData("604801 s", "is out of range")]
    [InlineData("168.001 h", "is out of range")]
    [InlineData("-5 s", "is out of range")]
    [InlineData("1234567890123456 s", "has too many digits")]
    [InlineData("", "is missing")]
    [InlineData("   ", "is missing")]
    [InlineData(null, "is missing")]
    public void Tells_what_is_wrong(string? text, string wrong) =>
        Assert.Contains(wrong, Assert.Single(QuantityText.Duration.Read("--on", text).Problems).Wrong, StringComparison.Ordinal);

    [Theory]
    [InlineData("NaN")]
    [InlineData("NaN s")]
    [InlineData("Infinity s")]
    [InlineData("\u221E s")]
    [InlineData("1e999 s")]
    [InlineData("1e3 s")]
    [InlineData("0x10 s")]
    [InlineData("+5 s")]
    [InlineData("--5 s")]
    [InlineData("5. s")]
    [InlineData(".5 s")]
    [InlineData("1,000.5 s")]
    [InlineData("1 000 s")]
    [InlineData("1.2.3 s")]
    [InlineData("five s")]
    [InlineData("15 s 45 s")]
    [InlineData("15\ts")]
    [InlineData("15\ns")]
    [InlineData("15s\0")]
    [InlineData("\u001b[31m15 s")]
    [InlineData("\u0661\u0665 s")]
    [InlineData("\uFF11\uFF15 s")]
    [InlineData("s")]
    [InlineData("-")]
    public void Refuses_nonsense(string text)
    {
        Problem problem = Assert.Single(QuantityText.Duration.Read("--on", text).Problems);

        Assert.DoesNotContain(problem.ToString(), char.IsControl);
    }

    [Fact]
    public void Refuses_a_unit_of_another_quantity_and_pounds()
    {
        Assert.NotEmpty(QuantityText.Mass.Read("f", "180 lb").Problems);
        Assert.NotEmpty(QuantityText.Torque.Read("f", "24 N").Problems);
        Assert.NotEmpty(QuantityText.PulseRate.Read("f", "50 kHz").Problems);
        Assert.NotEmpty(QuantityText.Percentage.Read("f", "0.5").Problems);
        Assert.NotEmpty(QuantityText.Angle.Read("f", "900 deg").Problems);
    }

    [Theory]
    [InlineData("0.9 s", false)]
    [InlineData("1 s", true)]
    [InlineData("120 s", true)]
    [InlineData("2 min", true)]
    [InlineData("120.1 s", false)]
    public void Holds_a_narrower_range_with_both_ends(string text, bool good) =>
        Assert.Equal(good, QuantityText.Duration.Within(1, 120).Read("--on", text).Problems.IsEmpty);

    [Fact]
    public void Never_fails_on_random_text_and_shows_only_short_harmless_excerpts()
    {
        Random random = new(20261125);
        const string Alphabet = "0123456789.,-+eExXsmhkHzNAµ° %\t\n\0\u001b\u202E\uD83D\uDE00\u0661cmround";
        for (int round = 0; round < 20_000; round++)
        {
            char[] letters = new char[random.Next(0, 90)];
            for (int at = 0; at < letters.Length; at++)
            {
                letters[at] = Alphabet[random.Next(Alphabet.Length)];
            }
            string text = new(letters);
            IEnumerable<Problem> problems =
                [.. QuantityText.Duration.Read("f", text).Problems, .. QuantityText.Angle.Read("f", text).Problems, .. PadText.Read("f", text).Problems];
            Assert.All(problems, problem => Assert.True(problem.Found.Length <= 90 && !problem.Found.Any(char.IsControl)));
        }
    }
}
