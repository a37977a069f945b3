import { z } from 'zod'

/** The window's policy forbids making code from text; zod is told before its first parse, or it would try and be refused. */
z.config({ jitless: true })
