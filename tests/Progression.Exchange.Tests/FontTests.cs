using System.Reflection;

namespace Progression.Exchange.Tests;

/// <summary>A sheet is printed with letters that travel with the program, so that it looks the same on a server without fonts.</summary>
public sealed class FontTests
{
    [Theory]
    [InlineData("fonts/DejaVuSans.ttf")]
    [InlineData("fonts/DejaVuSans-Bold.ttf")]
    public void A_font_is_carried_whole(string name)
    {
        using Stream? font = Assembly.Load("Progression.Exchange").GetManifestResourceStream(name);
        Assert.NotNull(font);
        Assert.InRange(font.Length, 500_000, 1_000_000);
    }
}
