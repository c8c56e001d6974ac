using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Mappings;

/// <summary>All kinds of entry share one table; a column serves every kind that has something of its sort to say.</summary>
internal sealed class TimelineMapping : IEntityTypeConfiguration<TimelineEntry>
{
    public void Configure(EntityTypeBuilder<TimelineEntry> builder)
    {
        builder.ToTable("timeline");
        builder.HasKey(e => new { e.JobNumber, e.Sequence });
        builder.Property(e => e.Sequence).ValueGeneratedNever();
        builder.Ignore(e => e.IsEvidence);
        builder
            .HasDiscriminator<string>("kind")
            .HasValue<BookedIn>("booked in")
            .HasValue<ComplaintChanged>("complaint changed")
            .HasValue<SetupDescribed>("setup described")
            .HasValue<SetupChosen>("setup chosen")
            .HasValue<ReadingTaken>("reading taken")
            .HasValue<ReadingWithdrawn>("reading withdrawn")
            .HasValue<StateChanged>("state changed")
            .HasValue<NoteWritten>("note written");
        builder.Property("kind").HasMaxLength(40);
    }
}
