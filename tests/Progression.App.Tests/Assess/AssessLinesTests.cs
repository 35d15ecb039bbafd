using Progression.App.Assess;
using Progression.Core.People;
using Progression.Records.Library;

namespace Progression.App.Tests.Assess;

public sealed class AssessLinesTests
{
    [Fact]
    public void Every_sign_has_one_line_with_a_title_of_its_own()
    {
        var lines = AssessLines.Of(LibraryReader.Default()).Where(AssessLines.IsSign).ToArray();

        Assert.Equal(Signs.Questions.Keys, lines.Select(line => line.Id).Order(StringComparer.Ordinal));
        Assert.All(lines, line => Assert.NotEqual(line.Id.Replace('_', ' '), line.Title));
    }
}
