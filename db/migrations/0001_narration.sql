CREATE TABLE `narration_lines` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`take_id` text NOT NULL,
	`start_ms` integer NOT NULL,
	`end_ms` integer NOT NULL,
	`text` text NOT NULL,
	`voice` text,
	`heard_text` text,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`take_id`) REFERENCES `takes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `narration_lines_job` ON `narration_lines` (`job_id`);--> statement-breakpoint
CREATE INDEX `narration_lines_take` ON `narration_lines` (`take_id`,`start_ms`);--> statement-breakpoint
CREATE TABLE `proposals` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`take_id` text NOT NULL,
	`key` text NOT NULL,
	`start_ms` integer NOT NULL,
	`end_ms` integer NOT NULL,
	`heard` text NOT NULL,
	`decision` text NOT NULL,
	`record_id` text,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`take_id`) REFERENCES `takes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `proposals_key` ON `proposals` (`job_id`,`key`);--> statement-breakpoint
CREATE INDEX `proposals_take` ON `proposals` (`take_id`,`start_ms`);