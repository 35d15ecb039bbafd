using Progression.Core.Clinic;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Reviews;

namespace Progression.Records.Tests.Reviews;

public sealed class ReviewJsonTests
{
    private static readonly DateTimeOffset Monday = new(2026, 3, 2, 8, 30, 0, 250, TimeSpan.Zero);
    private static readonly ReviewedPlan Plan = new(2, new string('a', 64));

    private static readonly ReviewRecord Whole = new(
    [
        new() { Step = ReviewStep.Requested, By = new("1001", "robin", ClinicRole.Therapist), At = Monday, Plan = Plan, Risk = new(0, 1, 2, 3, null) },
        new() { Step = ReviewStep.Commented, By = new("1002", "kim", ClinicRole.Supervisor), At = Monday.AddHours(1), Plan = Plan, Comments = [new(new CellAddress("stim", 3), "Why?"), new(null, "Else \"good\".")] },
        new() { Step = ReviewStep.Signed, By = new("1002", "kim", ClinicRole.Supervisor), At = Monday.AddHours(2), Plan = Plan, Meaning = SignatureMeaning.AgreedWithComments, Risk = new(0, 0, 0, 0, 4) },
    ]);

    [Fact]
    public void What_is_written_is_read_again_as_the_same() => Assert.Equal(Whole, ReviewJson.Read(ReviewJson.Write(Whole)));

    [Fact]
    public void A_record_is_written_in_one_way_only() => Assert.Equal(
        """{"acts":[{"at":"2026-03-02T08:30:00.250Z","by":{"account":"1001","name":"robin","role":"therapist"},"plan":{"hash":"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa","rev":2},"risk":{"overrides":3,"severe":1,"stops":0,"warnings":2},"step":"requested"}],"schema":"review/1"}""",
        ReviewJson.Write(new([Whole.Acts[0]])));

    [Fact]
    public void A_signature_keeps_the_words_it_was_signed_with() =>
        Assert.Contains("\"says\":\"I have reviewed this plan and agree that it is carried out with my comments heeded.\"", ReviewJson.Write(Whole), StringComparison.Ordinal);

    [Theory]
    [InlineData("""{"schema":"review/2"}""", "review/2")]
    [InlineData("""{"schema":"review/1","acts":[{"step":"approved"}]}""", "no ReviewStep")]
    [InlineData("""{"schema":"review/1","acts":[{"step":"signed","by":{"account":"1","name":"x","role":"boss"}}]}""", "no ClinicRole")]
    public void Another_form_is_refused(string json, string named) =>
        Assert.Contains(named, Assert.Throws<FormatException>(() => ReviewJson.Read(json)).Message, StringComparison.Ordinal);
}
